import { formatPlanCalendar, idOf, type Program } from '@larkhold/engine';
import { tableStyles } from '@larkhold/ui';
import { planCalendarWords, say } from '@larkhold/words';
import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { App, AppView } from '../../shell/app-context.ts';
import { archerIdOf } from '../../shell/archer-id.ts';
import { PlaceElement } from '../../shell/place-element.ts';
import { fileNameOf } from '../../shell/save-file.ts';
import { typedIn } from '../../shell/typed-in.ts';
import { planPageStyles } from './plan-page-styles.ts';
import { daysPerWeekOf, type PlannedWeek, planFor } from './plan-settings.ts';
import { planWeeks } from './plan-weeks.ts';

const weekChoices = [4, 8, 12, 26] as const;

/**
 * The coming weeks of a program as the rules have them: a table, a competition with its lighter weeks, and a calendar file.
 *
 * @prop programId the program that is planned; the chosen one where it is absent
 */
@customElement('plan-page')
export class PlanPage extends PlaceElement {
  static override styles = [...PlaceElement.styles, tableStyles, planPageStyles];

  @property({ attribute: false }) programId: string | undefined;
  @state() private weekCount: number = 8;
  #kept: { view: AppView; program: Program; weekCount: number; weeks: PlannedWeek[] } | undefined;

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const { programs, chosen } = app.view;
    const program = programs.find((one) => idOf(one) === this.programId) ?? chosen;
    const weeks = this.#weeks(app.view, program);
    return html`<h1>${say('plan.coming')}</h1>
      <p class="forecast">
        ${say('plan.forecast')}
      </p>
      ${this.#settings(app, program)}
      <div class="row">
        <button ?disabled=${weeks.length === 0} @click=${() => this.#export(app, program, weeks)}>${say('plan.calendar')}</button>
      </div>
      ${weeks.length === 0 ? html`<p class="empty">${say('plan.none')}</p>` : html`<div class="in-two">${planWeeks(weeks, app.view.kit.units)}</div>`}`;
  }

  #settings({ view, act }: App, program: Program) {
    const { programs } = view;
    return html`<div class="fields">
        <label
          >${say('plan.whichProgram')}
          <select
            @change=${(event: Event) => {
              this.programId = typedIn(event);
            }}
          >
            ${programs.map((one) => html`<option value=${idOf(one)} ?selected=${one === program}>${one.title}</option>`)}
          </select>
        </label>
        <label
          >${say('plan.daysAWeek')}
          <select @change=${(event: Event) => {
            // Read at once: when the kit is patched, the event no longer knows what it was about.
            const daysPerWeek = Number(typedIn(event));
            void act.changeKit(({ plan }) => ({ plan: { ...plan, daysPerWeek } }));
          }}>
            ${[1, 2, 3, 4, 5, 6, 7].map(
              (days) => html`<option value=${days} ?selected=${days === daysPerWeekOf(view)}>${days}</option>`,
            )}
          </select>
        </label>
        <label
          >${say('plan.weeks')}
          <select
            @change=${(event: Event) => {
              this.weekCount = Number(typedIn(event));
            }}
          >
            ${weekChoices.map(
              (weeks) => html`<option value=${weeks} ?selected=${weeks === this.weekCount}>${weeks}</option>`,
            )}
          </select>
        </label>
      </div>
      <p class="small"><a href="#/season">${say('plan.title')}</a></p>`;
  }

  #weeks(view: AppView, program: Program): PlannedWeek[] {
    const { weekCount } = this;
    const kept = this.#kept;
    const isSame =
      kept?.program === program &&
      kept.weekCount === weekCount &&
      kept.view.journal === view.journal &&
      kept.view.kit === view.kit &&
      kept.view.season === view.season &&
      kept.view.today === view.today;
    if (isSame) return kept.weeks;
    const weeks = planFor(view, program, weekCount);
    this.#kept = { view, program, weekCount, weeks };
    return weeks;
  }

  async #export(app: App, { title, id }: Program, weeks: readonly PlannedWeek[]): Promise<void> {
    const { view, act } = app;
    const archerId = await archerIdOf(app);
    const rows = weeks.flatMap((week) => week.rows);
    const words = planCalendarWords(view.kit.units);
    const text = formatPlanCalendar(rows, { program: title, programId: id, madeAt: act.instant(), archerId, words });
    act.saveFile(`${fileNameOf(title)}-plan-${view.today}.ics`, text);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'plan-page': PlanPage;
  }
}
