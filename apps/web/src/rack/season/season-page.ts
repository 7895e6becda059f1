import { emptySeason, formatPlanCalendar, idOf, type Problem, type Season, seasonNotices } from '@larkhold/engine';
import { tableStyles } from '@larkhold/ui';
import { noticeWords, planCalendarWords, problemWords, say } from '@larkhold/words';
import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { App, AppView } from '../../shell/app-context.ts';
import { archerIdOf } from '../../shell/archer-id.ts';
import { PlaceElement } from '../../shell/place-element.ts';
import { planHref } from '../../shell/routing.ts';
import { fileNameOf } from '../../shell/save-file.ts';
import { planPageStyles } from '../plan/plan-page-styles.ts';
import { type PlannedWeek, seasonPlan } from '../plan/plan-settings.ts';
import { planWeeks } from '../plan/plan-weeks.ts';
import { checkedSeason } from './edit-season.ts';
import './season-file.ts';
import './season-lists.ts';
import type { SeasonChange } from './season-lists.ts';
import { seasonStyles } from './season-styles.ts';
import './season-weekdays.ts';
import { typedIn } from '../../shell/typed-in.ts';

const weekChoices = [4, 8, 12, 26] as const;

/** The season: the plan of the coming weeks, the parts of it that will not happen, and a form to change it. */
@customElement('season-page')
export class SeasonPage extends PlaceElement {
  static override styles = [...PlaceElement.styles, tableStyles, planPageStyles, seasonStyles];

  @state() private weekCount: number = 8;
  @state() private said = '';
  /** The season before the last change. */
  @state() private earlier: Season | undefined;
  #kept: { view: AppView; weekCount: number; weeks: PlannedWeek[] } | undefined;

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const { season, programs } = app.view;
    const notices = season.own ? seasonNotices(season.own, programs) : [];
    return html`<h1>${say('plan.title')}</h1>
      <p class="forecast">${season.isOwn ? say('plan.own', { title: season.season.title }) : say('plan.sensible')}</p>
      ${season.problems ? html`<p class="notice" role="alert">${say('plan.unread', { problem: problemsWords(season.problems) })}</p>` : nothing}
      ${notices.length === 0 ? nothing : html`<div class="notice"><h2>${say('plan.notices')}</h2><ul class="notices">${notices.map((notice) => html`<li>${noticeWords(notice)}</li>`)}</ul></div>`}
      ${this.#said(app)}
      <div @season-change=${(event: SeasonChange) => this.#change(event, app)}>
        ${this.#coming(app)}
        <div class="index">
          <season-lists .season=${season.own}></season-lists>
          <season-weekdays .season=${season.own}></season-weekdays>
          <season-file .season=${season.season}></season-file>
        </div>
      </div>`;
  }

  #said(app: App) {
    const { earlier } = this;
    return html`<div role="status">
      ${this.said === '' ? nothing : html`<div class="notice"><p>${this.said}</p>${earlier ? html`<button @click=${() => this.#undo(app, earlier)}>${say('plan.undo')}</button>` : nothing}</div>`}
    </div>`;
  }

  #coming(app: App) {
    const weeks = this.#weeks(app.view);
    const dated = nextDated(app.view);
    return html`<section aria-labelledby="coming">
      <h2 id="coming">${say('plan.coming')}</h2>
      ${dated ? html`<p class="next">${say('plan.nextDated', dated)}</p>` : nothing}
      ${weeks.length === 0 ? html`<p class="empty">${say('plan.none')}</p>` : planWeeks(weeks, app.view.kit.units)}
      <p class="dim small under">${say('plan.forecast')}</p>
      <div class="row">
        <label
          >${say('plan.weeks')}
          <select @change=${(event: Event) => {
            this.weekCount = Number(typedIn(event));
          }}>
            ${weekChoices.map((weeks) => html`<option value=${weeks} ?selected=${weeks === this.weekCount}>${weeks}</option>`)}
          </select>
        </label>
        <button ?disabled=${weeks.length === 0} @click=${() => this.#export(app, weeks)}>${say('plan.calendar')}</button>
      </div>
      <p class="small"><a href=${planHref(idOf(app.view.chosen))}>${say('plan.oneProgram')}</a></p>
    </section>`;
  }

  #weeks(view: AppView): PlannedWeek[] {
    const { weekCount } = this;
    const kept = this.#kept;
    const isSame =
      kept?.weekCount === weekCount &&
      kept.view.journal === view.journal &&
      kept.view.kit === view.kit &&
      kept.view.season === view.season &&
      kept.view.today === view.today;
    if (isSame) return kept.weeks;
    const weeks = seasonPlan(view, weekCount);
    this.#kept = { view, weekCount, weeks };
    return weeks;
  }

  /** Nothing is kept that no file could hold: what was typed stays in its form then. */
  #change(event: SeasonChange, app: App): void {
    const { season, isRemoval } = event.detail;
    const checked = checkedSeason(season);
    if (!checked.ok) {
      event.preventDefault();
      this.earlier = undefined;
      this.said = say('plan.notKept', { problem: problemWords(checked.problem) });
      return;
    }
    const before = app.view.season.own ?? emptySeason(say('plan.mySeason'));
    void this.#put(app, checked.season, before, say(isRemoval ? 'plan.removed' : 'plan.kept'));
  }

  async #put({ act }: App, season: Season, before: Season | undefined, words: string): Promise<void> {
    if (!(await act.putSeason(season))) return;
    this.earlier = before;
    this.said = words;
  }

  #undo(app: App, before: Season): void {
    void this.#put(app, before, undefined, say('plan.undone'));
  }

  async #export(app: App, weeks: readonly PlannedWeek[]): Promise<void> {
    const { view, act } = app;
    const { title, id } = view.season.season;
    const rows = weeks
      .flatMap((week) => week.rows)
      .filter(({ durationMs, kind }) => durationMs > 0 || kind === 'competition');
    const words = planCalendarWords(view.kit.units);
    const options = { program: title, programId: id, madeAt: act.instant(), archerId: await archerIdOf(app), words };
    act.saveFile(`${fileNameOf(title)}-${view.today}.ics`, formatPlanCalendar(rows, options));
  }
}

/** What the season has next that is bound to its day: a competition, a test, a coach's session. */
function nextDated({ season: { season }, today }: AppView): { what: string; day: string } | undefined {
  const all = [
    ...season.competitions.map(({ title, day }) => ({ what: title, day })),
    ...season.tests.map(({ program, day }) => ({ what: program.title, day })),
    ...season.dated.flatMap(({ by, sessions }) =>
      sessions.flatMap(({ day, programs }) =>
        programs.map(({ title }) => ({ what: say('plan.datedBy', { title, by }), day })),
      ),
    ),
  ];
  return all.filter(({ day }) => day >= today).sort((a, b) => (a.day < b.day ? -1 : 1))[0];
}

function problemsWords([first]: readonly Problem[]): string {
  return first ? problemWords(first) : '';
}

declare global {
  interface HTMLElementTagNameMap {
    'season-page': SeasonPage;
  }
}
