import { formatDay, plannedReasons, plannedWords, say, type Units } from '@larkhold/words';
import { html, nothing, type TemplateResult } from 'lit';
import type { PlannedWeek, ShownRow } from './plan-settings.ts';

/**
 * The coming weeks as a table: a row a drill, each with its reasons behind a press. Its looks are `planPageStyles`.
 * @param weeks in order
 * @param caption what it shows, for those who do not see it
 * @param units the archer's
 * @returns a table
 */
export function planTable(weeks: readonly PlannedWeek[], caption: string, units: Units): TemplateResult {
  return html`<table role="table">
    <caption class="visually-hidden">
      ${caption}
    </caption>
    <thead role="rowgroup">
      <tr role="row">
        <th role="columnheader" scope="col">${say('plan.day')}</th>
        <th role="columnheader" scope="col">${say('plan.drill')}</th>
        <th role="columnheader" scope="col" class="times">${say('plan.times')}</th>
      </tr>
    </thead>
    ${weeks.map(
      ({ week, kind, heldMs, rows }) => html`<tbody role="rowgroup">
        <tr role="row" class="week">
          <th role="rowheader" scope="rowgroup" colspan="3">
            ${weekName(week)} <span class="dim">${sumWords(rows, heldMs)}</span>
            ${kind === 'usual' ? nothing : html`<strong class="kind">${say(kind === 'taper' ? 'plan.taper' : 'plan.lighter')}</strong>`}
          </th>
        </tr>
        ${rows.map((row) => dayRow(row, units))}
      </tbody>`,
    )}
  </table>`;
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
