import type { ClimbWeek } from '@larkhold/engine';
import { formatDay, formatDuration, formatSeconds, say } from '@larkhold/words';
import { css, html, LitElement, nothing, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controlStyles, pageStyles, tableStyles } from '../page-styles.ts';
import { CLIMB, type ClimbStroke, climbStrokes } from './climb-strokes.ts';

/**
 * A climb as a picture: a stroke for each week behind, this one and those to come; the same in a sentence and as a table.
 *
 * @prop weeks as `climbWeeks` gives them
 */
@customElement('lark-climb')
export class LarkClimb extends LitElement {
  static override styles = [
    pageStyles,
    controlStyles,
    tableStyles,
    css`
      svg {
        display: block;
        width: min(100%, 36rem);
        margin-top: 0.6rem;
        overflow: visible;
      }
      .ground {
        stroke: var(--faint);
        stroke-width: 1.2;
      }
      .held {
        fill: var(--ink);
      }
      .now .held {
        fill: var(--accent);
      }
      .planned {
        fill: none;
        stroke: var(--dim);
        stroke-width: 0.9;
      }
      text {
        fill: var(--ink);
        font: 600 8px var(--font);
        text-anchor: middle;
      }
      .begin {
        text-anchor: start;
      }
      .end {
        text-anchor: end;
      }
      .foot {
        fill: var(--dim);
        font-weight: 400;
        font-size: 7px;
      }
      th,
      td {
        padding: 0.3rem 0.6rem 0.3rem 0;
      }
      details {
        margin-top: 0.6rem;
      }
    `,
  ];

  @property({ attribute: false }) weeks: readonly ClimbWeek[] = [];

  override render() {
    const { weeks } = this;
    if (weeks.length === 0) return nothing;
    const strokes = climbStrokes(weeks);
    const sentence = sentenceOf(weeks);
    const ground = CLIMB.above + CLIMB.tall;
    const width = Math.max(12, weeks.length) * CLIMB.step;
    return html`<svg viewBox="0 0 ${width} ${ground + CLIMB.below}" role="img" aria-label=${pictureWords(weeks)}>
        ${svg`<path class="ground" d=${`M0 ${ground}H${width}`}></path>
        ${strokes.map(
          ({ week, held, planned }) => svg`<g class=${week.kind}>
            <path class="planned" d=${planned}></path><path class="held" d=${held}></path>
          </g>`,
        )}
        ${labelled(strokes).map((one) => label(one, strokes, ground, width))}`}
      </svg>
      ${sentence === '' ? nothing : html`<p>${sentence}</p>`}
      <details>
        <summary>${say('known.climbTable')}</summary>
        ${this.#table(weeks)}
      </details>`;
  }

  #table(weeks: readonly ClimbWeek[]) {
    return html`<table aria-label=${say('known.climb')}>
      <thead>
        <tr>
          <th scope="col">${say('known.week')}</th>
          <th scope="col">${say('known.longest')}</th>
          <th scope="col">${say('known.held')}</th>
        </tr>
      </thead>
      <tbody>
        ${weeks.flatMap((week) => [
          week.kind === 'ahead'
            ? nothing
            : row(week, week.longestMs, week.heldMs, week.kind === 'now' ? say('known.now') : ''),
          week.plannedHeldMs > 0 ? row(week, week.plannedLongestMs, week.plannedHeldMs, say('known.ahead')) : nothing,
        ])}
      </tbody>
    </table>`;
  }
}

/** A label nearer to an edge than this does not fit around its stroke, in the picture's units. */
const NEAR_EDGE = 2 * CLIMB.step;

function row({ monday }: ClimbWeek, longestMs: number, heldMs: number, note: string) {
  return html`<tr>
    <th scope="row">${formatDay(monday, 'plain')} <span class="dim">${note}</span></th>
    <td>${longestMs > 0 ? formatSeconds(longestMs) : say('known.none')}</td>
    <td>${formatDuration(heldMs)}</td>
  </tr>`;
}

/** The first stroke, the last that was held, and the last to come: their numbers are in the picture, where they do not touch. */
function labelled(strokes: readonly ClimbStroke[]): ClimbStroke[] {
  const held = strokes.filter(({ tall }) => tall > 0);
  const last = strokes.findLast(({ plannedTall }) => plannedTall > 0);
  const wanted = [held.at(-1), last, held[0]].filter((one) => one !== undefined);
  const shown: ClimbStroke[] = [];
  for (const one of wanted) if (shown.every(({ x }) => Math.abs(x - one.x) > 2 * CLIMB.step)) shown.push(one);
  return shown;
}

/** A stroke's number and day. Near an edge they begin or end at it, so that nothing is cut off. */
function label({ x, tall, week }: ClimbStroke, strokes: readonly ClimbStroke[], ground: number, width: number) {
  const ms = tall > 0 ? week.longestMs : week.plannedLongestMs;
  // A number is as wide as two strokes: it is written above the taller of them.
  const beside = strokes.filter((one) => Math.abs(one.x - x) <= CLIMB.step);
  const top = ground - Math.max(...beside.flatMap((one) => [one.tall, one.plannedTall]));
  const edge = x < NEAR_EDGE ? 'begin' : x > width - NEAR_EDGE ? 'end' : '';
  const at = (middle: number) => (edge === 'begin' ? 1 : edge === 'end' ? width - 1 : middle);
  return svg`<text class=${edge} x=${at(x + 2)} y=${top - 3}>${formatSeconds(ms)}</text>
    <text class=${`foot ${edge}`} x=${at(x)} y=${ground + 9}>${formatDay(week.monday, 'plain')}</text>`;
}

function sentenceOf(weeks: readonly ClimbWeek[]): string {
  const held = weeks.filter(({ longestMs }) => longestMs > 0);
  const [first, now] = [held[0], held.at(-1)];
  const last = weeks.findLast(({ plannedLongestMs }) => plannedLongestMs > 0);
  const ahead = last && { ahead: last.plannedLongestMs, aheadDay: last.monday };
  if (!first || !now) return ahead ? say('known.climbAhead', ahead) : '';
  const behind = { first: first.longestMs, firstDay: first.monday, now: now.longestMs };
  return ahead ? say('known.climbSentence', { ...behind, ...ahead }) : say('known.climbFrom', behind);
}

function pictureWords(weeks: readonly ClimbWeek[]): string {
  const ahead = weeks.filter(({ kind }) => kind === 'ahead').length;
  return say('known.climbWords', { past: weeks.length - ahead, ahead });
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-climb': LarkClimb;
  }
}
