import type { DraftOutline, Program, WeekAhead } from '@larkhold/engine';
import { fatiguePicture } from '@larkhold/ui';
import { formatDuration, formatReps, formatWeight, pieces, say, type Units } from '@larkhold/words';
import { html, nothing, svg, type TemplateResult } from 'lit';

/**
 * The numbers that are always in sight.
 * @param outline of the draft
 * @returns total time and time under tension
 */
export function totalsTemplate({ timeline, tensionMs }: DraftOutline): TemplateResult {
  const holds = timeline.steps.filter(({ kind }) => kind === 'hold').length;
  const total = formatDuration(timeline.durationMs);
  return html`<dl class="totals numbers">
      <div class="whole"><dt>${say('bench.total')}</dt><dd id="total-time">${total}</dd></div>
      <div><dt>${say('bench.fullDraw')}</dt><dd id="tension-time">${formatDuration(tensionMs)}</dd></div>
      <div class="spare"><dt>${say('bench.titleHolding')}</dt><dd>${holds}</dd></div>
    </dl>`;
}

/**
 * The timeline as a ribbon's strokes: in one row where there is little room, a row for each block where there is more.
 * @param outline of the draft
 * @param titles of its blocks
 * @returns both; the style sheet shows one
 */
export function strokesTemplate({ timeline }: DraftOutline, titles: readonly string[]): TemplateResult {
  return html`<lark-timeline-picture class="in-one" .timeline=${timeline}></lark-timeline-picture>
    <lark-timeline-picture class="by-block" .timeline=${timeline} .titles=${titles}></lark-timeline-picture>`;
}

/**
 * What the first session leaves of the archer, by the model.
 * @param outline of the draft
 * @param kitHref where the longest hold is given
 * @returns the curve with its words
 */
export function fatigueTemplate({ timeline, fatigue }: DraftOutline, kitHref: string): TemplateResult {
  if (!fatigue) {
    return html`<p class="dim">${pieces('bench.giveHold', { kit: html`<a href=${kitHref}>${say('bench.kit')}</a>` })}</p>`;
  }
  const { failsAt } = fatigue;
  const least = Math.min(...fatigue.reps.map(({ reserve }) => reserve));
  const words = failsAt
    ? say('bench.failsAt', {
        ...{ block: failsAt.block + 1, set: failsAt.set + 1, rep: failsAt.rep + 1 },
        in: failsAt.secondsIn * 1000,
      })
    : say('bench.stands', { reserve: least });
  return html`${fatiguePicture(timeline, fatigue, say('bench.strengthLeft', { words }))}
    <p>${words}</p>
    <p class="small dim">${say('outlook.caution')}</p>`;
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
  const doseOf = (block: WeekAhead['blocks'][number]): string => {
    const weight = formatWeight(block.addedWeightLbf, units);
    return block.addedWeightLbf > 0 ? say('bench.doseAdded', { reps: formatReps(block), weight }) : formatReps(block);
  };
  return html`<div class="weeks-room"><table class="weeks numbers" aria-label=${say('bench.weeksAhead')}>
    <thead>
      <tr><th scope="col">${say('bench.week')}</th><th scope="col">${say('bench.lastSession')}</th><th scope="col">${say('bench.underTension')}</th></tr>
    </thead>
    <tbody>
      ${weeks.map(
        ({ week, blocks, tensionMs, isDeload, limits }) => html`<tr>
          <th scope="row">${week}</th>
          <td>
            ${blocks.map(
              (block) => html`<div>
                ${program.blocks.length > 1 ? pieces('bench.blockDose', { block: html`<span class="dim">${block.title}</span>`, dose: doseOf(block) }) : doseOf(block)}
              </div>`,
            )}
            ${isDeload ? html`<div class="dim small">${say('bench.lighterWeek')}</div>` : nothing}
            ${limits.length > 0 ? html`<div class="dim small">${say('bench.heldBack')}</div>` : nothing}
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

/** The number is beside it, so the bar itself says nothing to those who hear the page. */
function bar(share: number): TemplateResult {
  return svg`<svg class="week-bar" viewBox="0 0 100 6" preserveAspectRatio="none" aria-hidden="true">
    <rect class="drawn" width=${Math.round(share * 100)} height="6"></rect>
  </svg>`;
}
