import { formatPlanCalendar, idOf, type PlanRow, type Program } from '@larkhold/engine';
import { formatCounted, formatDay, formatDuration, formatMinutes } from '@larkhold/words';
import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { App, AppView } from '../../shell/app-context.ts';
import { archerIdOf } from '../../shell/archer-id.ts';
import { PlaceElement } from '../../shell/place-element.ts';
import { fileNameOf } from '../../shell/save-file.ts';
import { planPageStyles } from './plan-page-styles.ts';
import { daysPerWeekOf, type PlannedWeek, planFor } from './plan-settings.ts';

const weekChoices = [4, 8, 12, 26] as const;
const weekWords = { usual: '', deload: 'lighter week', taper: 'lighter before the competition' } as const;

/**
 * The coming weeks of a program as the rules have them: a table, a competition with its lighter weeks, and a calendar file.
 *
 * @prop programId the program that is planned; the chosen one where it is absent
 */
@customElement('plan-page')
export class PlanPage extends PlaceElement {
  static override styles = [...PlaceElement.styles, planPageStyles];

  @property({ attribute: false }) programId: string | undefined;
  @state() private weekCount: number = 8;
  #kept: { view: AppView; program: Program; weekCount: number; weeks: PlannedWeek[] } | undefined;

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const { programs, chosen } = app.view;
    const program = programs.find((one) => idOf(one) === this.programId) ?? chosen;
    const weeks = this.#weeks(app.view, program);
    return html`<h1>The coming weeks</h1>
      <p class="forecast">
        A forecast by the program's own rules, as if every session went clean. What you really hold changes it. A coach's plan comes first.
      </p>
      ${this.#settings(app, program)}
      <div class="row">
        <button ?disabled=${weeks.length === 0} @click=${() => this.#export(app, program, weeks)}>Save as a calendar file</button>
      </div>
      ${weeks.length === 0 ? html`<p class="empty">Nothing is planned in these weeks.</p>` : this.#table(program, weeks)}`;
  }

  #settings({ view, act }: App, program: Program) {
    const { kit, programs, today } = view;
    const competitionDay = kit.plan?.competitionDay;
    const isPast = competitionDay !== undefined && competitionDay < today;
    return html`<div class="fields">
        <label
          >Program
          <select
            @change=${(event: Event) => {
              this.programId = chosenIn(event);
            }}
          >
            ${programs.map((one) => html`<option value=${idOf(one)} ?selected=${one === program}>${one.title}</option>`)}
          </select>
        </label>
        <label
          >Days a week
          <select @change=${(event: Event) => {
            // Read at once: when the kit is patched, the event no longer knows what it was about.
            const daysPerWeek = Number(chosenIn(event));
            void act.changeKit(({ plan }) => ({ plan: { ...plan, daysPerWeek } }));
          }}>
            ${[1, 2, 3, 4, 5, 6, 7].map(
              (days) => html`<option value=${days} ?selected=${days === daysPerWeekOf(view)}>${days}</option>`,
            )}
          </select>
        </label>
        <label
          >Weeks
          <select
            @change=${(event: Event) => {
              this.weekCount = Number(chosenIn(event));
            }}
          >
            ${weekChoices.map(
              (weeks) => html`<option value=${weeks} ?selected=${weeks === this.weekCount}>${weeks}</option>`,
            )}
          </select>
        </label>
        <label
          >Competition on
          <input
            type="date"
            .value=${competitionDay ?? ''}
            @change=${(event: Event) => {
              const chosen = chosenIn(event) || undefined;
              void act.changeKit(({ plan }) => ({ plan: { ...plan, competitionDay: chosen } }));
            }}
          />
        </label>
      </div>
      <p class="dim small" role="status">
        ${
          competitionDay === undefined
            ? 'A competition makes the two weeks before it lighter, here and on the line.'
            : isPast
              ? `The competition of ${formatDay(competitionDay, 'year')} is over: it changes nothing any more.`
              : `The two weeks before ${formatDay(competitionDay, 'year')} are lighter, here and on the line. No drill on that day nor the day before.`
        }
      </p>`;
  }

  #table(program: Program, weeks: readonly PlannedWeek[]) {
    return html`<table role="table">
      <caption class="visually-hidden">
        ${program.title}: planned days, week by week
      </caption>
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col">Day</th>
          <th role="columnheader" scope="col">Drill</th>
          <th role="columnheader" scope="col" class="times">At full draw, of all</th>
        </tr>
      </thead>
      ${weeks.map(
        ({ week, kind, heldMs, rows }) => html`<tbody role="rowgroup">
          <tr role="row" class="week">
            <th role="rowheader" scope="rowgroup" colspan="3">
              ${weekName(week)}
              <span class="dim">
                ${formatCounted(rows.filter(({ kind: of }) => of !== 'competition').length, 'day')}${heldMs > 0 ? `, ${formatDuration(heldMs)} at full draw` : ''}
              </span>
              ${kind === 'usual' ? nothing : html`<strong class="kind">${weekWords[kind]}</strong>`}
            </th>
          </tr>
          ${rows.map(dayRow)}
        </tbody>`,
      )}
    </table>`;
  }

  #weeks(view: AppView, program: Program): PlannedWeek[] {
    const { weekCount } = this;
    const kept = this.#kept;
    const isSame =
      kept?.program === program &&
      kept.weekCount === weekCount &&
      kept.view.journal === view.journal &&
      kept.view.kit === view.kit &&
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
    const text = formatPlanCalendar(rows, { program: title, programId: id, madeAt: act.instant(), archerId });
    act.saveFile(`${fileNameOf(title)}-plan-${view.today}.ics`, text);
  }
}

function dayRow({ date, kind, words, why, heldMs, durationMs }: PlanRow) {
  const isCompetition = kind === 'competition';
  return html`<tr role="row" class=${kind}>
    <th role="rowheader" scope="row">${formatDay(date, 'short')}</th>
    <td role="cell">
      <details>
        <summary>${words}</summary>
        <ul>
          ${why.map((line) => html`<li>${line}</li>`)}
        </ul>
      </details>
    </td>
    <td role="cell" class="times">${isCompetition ? nothing : `${formatDuration(heldMs)} of ${formatMinutes(durationMs)}`}</td>
  </tr>`;
}

function weekName(week: string): string {
  const [year, number] = week.split('-W');
  return `Week ${Number(number)}, ${year}`;
}

function chosenIn({ target }: Event): string {
  return target instanceof HTMLInputElement || target instanceof HTMLSelectElement ? target.value : '';
}

declare global {
  interface HTMLElementTagNameMap {
    'plan-page': PlanPage;
  }
}
