import { idOf, type PlanRow, type Program, planWeeks } from '@larkhold/engine';
import { archerOf } from '@larkhold/store';
import { tableStyles } from '@larkhold/ui';
import { formatReps, say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { AppView } from './app-context.ts';
import { PlaceElement } from './place-element.ts';

/** Sessions that are shown of each. */
const SHOWN = 4;
/** Whole weeks that hold them, whatever the day. */
const WEEKS = 3;
const DAYS_A_WEEK = 3;

/**
 * The next sessions under two programs, side by side: what an archer looks at before one takes the place of the other.
 *
 * @prop mine what there is
 * @prop theirs what would take its place
 */
@customElement('program-swap')
export class ProgramSwap extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    tableStyles,
    css`
      table {
        margin: 0.6rem 0;
      }
      th,
      td {
        padding: 0.35rem 0.8rem 0.35rem 0;
        vertical-align: baseline;
        overflow-wrap: anywhere;
      }
      thead th:first-child {
        overflow-wrap: normal;
      }
      thead th {
        color: var(--dim);
        font-size: var(--text-small);
      }
    `,
  ];

  @property({ attribute: false }) mine: Program | undefined;
  @property({ attribute: false }) theirs: Program | undefined;

  override render() {
    const { app, mine, theirs } = this;
    if (!app || !mine || !theirs) return nothing;
    const names = { mine: mine.title, theirs: theirs.title };
    const isSame = idOf(mine) === idOf(theirs);
    // What was done with the one counts for what takes its place.
    const [now, then] = [nextSessions(app.view, mine), nextSessions(app.view, theirs)];
    return html`<h3>${isSame ? say('swap.title', names) : say('swap.titleToday', names)}</h3>
      <p class="dim small">${say('swap.about')}</p>
      <table>
        <thead>
          <tr>
            <th scope="col">${say('swap.session')}</th>
            <th scope="col">${say('swap.yours')}</th>
            <th scope="col">${say('swap.theirs')}</th>
          </tr>
        </thead>
        <tbody>
          ${Array.from(
            { length: SHOWN },
            (_, index) => html`<tr>
              <th scope="row">${say('swap.row', { n: index + 1 })}</th>
              <td>${rowWords(now[index])}</td>
              <td>${rowWords(then[index])}</td>
            </tr>`,
          )}
        </tbody>
      </table>`;
  }
}

/**
 * The next sessions of a program, as if each went clean.
 * @param view the app as it is
 * @param program in the rack or not
 * @returns planned days in order
 */
export function nextSessions(
  { journal, today, kit }: Pick<AppView, 'journal' | 'today' | 'kit'>,
  program: Program,
): PlanRow[] {
  const rows = planWeeks({
    ...{ program, records: journal.drills, today, weeks: WEEKS, archer: archerOf(kit) },
    ...{ daysPerWeek: kit.plan?.daysPerWeek ?? DAYS_A_WEEK, competitionDay: kit.plan?.competitionDay },
  });
  return rows.filter(({ kind }) => kind !== 'competition').slice(0, SHOWN);
}

function rowWords(row: PlanRow | undefined): string {
  if (!row || row.drills.length === 0) return say('swap.none');
  return say('swap.held', { reps: row.drills.map(formatReps).join(' + '), ms: row.heldMs });
}

declare global {
  interface HTMLElementTagNameMap {
    'program-swap': ProgramSwap;
  }
}
