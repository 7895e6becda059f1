import { dayNumber, mondayNumber } from '@larkhold/engine';
import { limbPath } from '@larkhold/ui';
import { formatDay, plannedReasons, plannedWords, say, type Units } from '@larkhold/words';
import { html, nothing, svg, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { PlannedWeek, ShownRow } from './plan-settings.ts';

/** A week's drawing in its own units: seven places, holds to come rise from the ground line. */
const WEEK = { day: 12, height: 34, tall: 28 } as const;

/**
 * The coming weeks, a line each: a stroke for every morning, as tall as what will be held. Pressed, a week shows its days, each with its reasons; the
 * first one does so at once. Its looks are `planPageStyles`.
 * @param weeks in order
 * @param units the archer's
 * @returns a list
 */
export function planWeeks(weeks: readonly PlannedWeek[], units: Units): TemplateResult {
  const mostMs = Math.max(1, ...weeks.flatMap(({ rows }) => rows.map(({ heldMs }) => heldMs)));
  return html`<ol class="weeks">
    ${repeat(
      weeks,
      ({ week }) => week,
      ({ week, kind, heldMs, rows }, at) => html`<li>
        <details class="week" ?open=${at === 0}>
          <summary>
            <span class="head"
              ><b>${weekName(week)}</b>
              ${kind === 'usual' ? nothing : html`<strong class="kind">${say(kind === 'taper' ? 'plan.taper' : 'plan.lighter')}</strong>`}
              <span class="dim small">${sumWords(rows, heldMs)}</span></span
            >
            ${weekStrokes(rows, mostMs)}
          </summary>
          <table role="table">
            <caption class="visually-hidden">
              ${weekName(week)}
            </caption>
            <thead role="rowgroup" class="visually-hidden">
              <tr role="row">
                <th role="columnheader" scope="col">${say('plan.day')}</th>
                <th role="columnheader" scope="col">${say('plan.drill')}</th>
                <th role="columnheader" scope="col">${say('plan.times')}</th>
              </tr>
            </thead>
            <tbody role="rowgroup">
              ${rows.map((row) => dayRow(row, units))}
            </tbody>
          </table>
        </details>
      </li>`,
    )}
  </ol>`;
}

/** Seven places on the ground: a stroke for what will be held, a ring for a test, a cross for a competition. */
function weekStrokes(rows: readonly ShownRow[], mostMs: number) {
  const monday = mondayNumber(dayNumber(rows[0]?.date ?? '1970-01-01'));
  const placed = rows.map((row) => ({ row, x: (dayNumber(row.date) - monday + 0.5) * WEEK.day }));
  const tallOf = ({ heldMs }: ShownRow): number => Math.max(4, (heldMs / mostMs) * WEEK.tall);
  return html`<svg class="strokes" viewBox="0 0 ${7 * WEEK.day} ${WEEK.height + 2}" aria-hidden="true">
    ${svg`<path class="ground" d="M0 ${WEEK.height}H${7 * WEEK.day}"></path>
      <path class="held" d=${placed.map(({ row, x }) => (row.heldMs > 0 ? limbPath(x, WEEK.height, tallOf(row)) : '')).join('')}></path>
      <path class="marked" d=${placed.map(({ row, x }) => markOf(row, x, row.heldMs > 0 ? tallOf(row) : 0)).join('')}></path>`}
  </svg>`;
}

function markOf({ kind }: ShownRow, x: number, tall: number): string {
  const y = WEEK.height - Math.min(tall, WEEK.height - 8) - 5;
  if (kind === 'test') return `M${x - 2.4} ${y}a2.4 2.4 0 1 1 4.8 0a2.4 2.4 0 1 1 -4.8 0`;
  return kind === 'competition' ? `M${x - 3} ${y - 3}l6 6M${x + 3} ${y - 3}l-6 6` : '';
}

function dayRow(row: ShownRow, units: Units) {
  const { date, kind, program, heldMs, durationMs } = row;
  const isDrill = durationMs > 0;
  const words = row.rest ? restWords(row.rest) : plannedWords(row, units);
  const said = program === undefined ? words : say('plan.program', { program, words });
  return html`<tr role="row" class=${kind}>
    <th role="rowheader" scope="row">${formatDay(date, 'short')}</th>
    <td role="cell">
      ${
        isDrill
          ? html`<details>
              <summary>${said} ${kind === 'test' ? html`<strong class="kind">${say('plan.test')}</strong>` : nothing}</summary>
              <ul>
                ${plannedReasons(row).map((line) => html`<li>${line}</li>`)}
              </ul>
            </details>`
          : said
      }
    </td>
    <td role="cell" class="times">${
      isDrill
        ? html`${say('plan.ofAll', { held: heldMs, all: durationMs })} <span class="at-draw">${say('plan.atDraw')}</span>`
        : nothing
    }</td>
  </tr>`;
}

function restWords({ to, why }: NonNullable<ShownRow['rest']>): string {
  return why ? say('plan.restRowWhy', { to, why }) : say('plan.restRow', { to });
}

function sumWords(rows: readonly ShownRow[], heldMs: number): string {
  const days = new Set(rows.filter(({ durationMs }) => durationMs > 0).map(({ date }) => date)).size;
  return days === 0 ? say('plan.weekNone') : say('plan.weekSum', { days, held: heldMs });
}

function weekName(week: string): string {
  const [year = '', number] = week.split('-W');
  return say('plan.week', { week: Number(number), year });
}
