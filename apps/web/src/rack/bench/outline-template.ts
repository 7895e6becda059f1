import type { DraftOutline, WeekAhead } from '@larkhold/engine';
import { FATIGUE_CAUTION, type Program } from '@larkhold/engine';
import { fatiguePicture, timelinePicture } from '@larkhold/ui';
import { formatCounted, formatDuration, formatReps, formatSeconds, formatWeight, type Units } from '@larkhold/words';
import { html, nothing, svg, type TemplateResult } from 'lit';

/**
 * The numbers that are always in sight.
 * @param outline of the draft
 * @returns total time, time under tension and the timeline to scale
 */
export function totalsTemplate({ timeline, tensionMs }: DraftOutline): TemplateResult {
  const holds = timeline.steps.filter(({ kind }) => kind === 'hold').length;
  const total = formatDuration(timeline.durationMs);
  const words = `Timeline to scale: ${formatCounted(holds, 'hold')} in ${total}`;
  return html`<dl class="totals numbers">
      <div><dt>Total</dt><dd id="total-time">${total}</dd></div>
      <div><dt>Full draw</dt><dd id="tension-time">${formatDuration(tensionMs)}</dd></div>
      <div class="spare"><dt>Holds</dt><dd>${holds}</dd></div>
    </dl>
    ${timelinePicture(timeline, words)}`;
}

/**
 * What the first session leaves of the archer, by the model.
 * @param outline of the draft
 * @param kitHref where the longest hold is given
 * @returns the curve with its words
 */
export function fatigueTemplate({ timeline, fatigue }: DraftOutline, kitHref: string): TemplateResult {
  if (!fatigue) {
    return html`<p class="dim">Give your longest hold in the <a href=${kitHref}>kit</a> to see how tired this makes you.</p>`;
  }
  const { failsAt } = fatigue;
  const least = Math.min(...fatigue.reps.map(({ reserve }) => reserve));
  const words = failsAt
    ? `By the model the hold fails in block ${failsAt.block + 1}, set ${failsAt.set + 1}, rep ${failsAt.rep + 1}, after ${formatSeconds(failsAt.secondsIn * 1000)}.`
    : `By the model every hold stands. At least ${Math.round(least * 100)} % of your strength to hold is left.`;
  return html`${fatiguePicture(timeline, fatigue, `Strength left along the session. ${words}`)}
    <p>${words}</p>
    <p class="small dim">${FATIGUE_CAUTION}</p>`;
}

/**
 * The weeks ahead as a table.
 * @param program the draft as a program
 * @param weeks one entry a week
 * @param units the archer's
 * @returns the table
 */
export function weeksTemplate(program: Program, weeks: readonly WeekAhead[], units: Units): TemplateResult {
  const most = Math.max(1, ...weeks.map(({ tensionMs }) => tensionMs));
  const weight = (lbf: number) => (lbf > 0 ? `, ${formatWeight(lbf, units)} added` : '');
  return html`<div class="weeks-room"><table class="weeks numbers" aria-label="The weeks ahead">
    <thead>
      <tr><th scope="col">Week</th><th scope="col">Last session</th><th scope="col">Under tension</th></tr>
    </thead>
    <tbody>
      ${weeks.map(
        ({ week, blocks, tensionMs, isDeload, limits }) => html`<tr>
          <th scope="row">${week}</th>
          <td>
            ${blocks.map(
              (block) => html`<div>
                ${program.blocks.length > 1 ? html`<span class="dim">${block.title}: </span>` : nothing}${formatReps(block)}${weight(block.addedWeightLbf)}
              </div>`,
            )}
            ${isDeload ? html`<div class="dim small">Lighter week</div>` : nothing}
            ${limits.length > 0 ? html`<div class="dim small">Held back by the growth limit</div>` : nothing}
          </td>
          <td>
            ${formatDuration(tensionMs)}
            ${bar(tensionMs / most)}
          </td>
        </tr>`,
      )}
    </tbody>
  </table></div>`;
}

/** The number stands beside it, so the bar itself says nothing to those who hear the page. */
function bar(share: number): TemplateResult {
  return svg`<svg class="week-bar" viewBox="0 0 100 6" preserveAspectRatio="none" aria-hidden="true">
    <rect class="drawn" width=${Math.round(share * 100)} height="6"></rect>
  </svg>`;
}
