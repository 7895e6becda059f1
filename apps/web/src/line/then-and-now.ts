import { dayNumber, type Prescription } from '@larkhold/engine';
import { pieces, say } from '@larkhold/words';
import { css, html, nothing, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { PlaceElement } from '../shell/place-element.ts';
import { heldMonths } from './held-months.ts';

const WIDTH = 320;
const HEIGHT = 92;
const BASE = 70;
const TOP = 16;
/** Room beyond today for what the next clean morning brings. */
const AHEAD_DAYS = 21;

/**
 * What could be held in a past month, what today, and what one more clean morning brings: one sentence and one curve.
 *
 * @prop prescription today's
 * @prop next what one more clean morning would bring
 */
@customElement('then-and-now')
export class ThenAndNow extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      .said {
        font-size: var(--text-large);
        line-height: 1.35;
        max-width: 32rem;
      }
      svg {
        display: block;
        width: min(100%, 34rem);
        margin-top: 0.9rem;
        overflow: visible;
      }
      .ground {
        stroke: var(--faint);
        stroke-width: 1.2;
      }
      .way {
        fill: none;
        stroke: var(--ink);
        stroke-width: 2;
        stroke-linecap: round;
        stroke-linejoin: round;
      }
      .ahead {
        fill: none;
        stroke: var(--accent);
        stroke-width: 2;
        stroke-dasharray: 2 4;
        stroke-linecap: round;
      }
      circle {
        fill: var(--ink);
      }
      .open {
        fill: var(--ground);
        stroke: var(--accent);
        stroke-width: 2;
      }
      text {
        fill: var(--dim);
        font-size: 11px;
      }
    `,
  ];

  @property({ attribute: false }) prescription: Prescription | undefined;
  @property({ attribute: false }) next: Prescription | undefined;

  override render() {
    const { app, prescription, next } = this;
    if (!app || !prescription) return nothing;
    const { journal, today } = app.view;
    const months = heldMonths(journal.drills, prescription.tool, today);
    const [then] = months;
    const now = months.at(-1);
    if (!then || !now || then === now) return nothing;
    const nextMs = longestOf(next);
    const brings = nextMs > Math.max(now.longestMs, longestOf(prescription)) ? nextMs : undefined;
    const strong = (ms: number) => html`<b class="numbers">${say('then.seconds', { ms })}</b>`;
    const sentence = pieces('then.sentence', {
      day: then.day,
      past: strong(then.longestMs),
      now: strong(now.longestMs),
    });
    return html`<section aria-labelledby="then">
      <h2 id="then" class="visually-hidden">${say('then.title')}</h2>
      <p class="said">${sentence}${brings ? [' ', ...pieces('then.brings', { next: strong(brings) })] : nothing}</p>
      ${this.#curve(months, today, brings)}
    </section>`;
  }

  #curve(months: readonly { day: string; longestMs: number }[], today: string, brings: number | undefined) {
    const [first] = months;
    const last = months.at(-1);
    if (!first || !last) return nothing;
    const from = dayNumber(first.day);
    const span = Math.max(1, dayNumber(today) + AHEAD_DAYS - from);
    const most = Math.max(...months.map(({ longestMs }) => longestMs), brings ?? 0);
    const x = (day: number) => Math.round(6 + ((day - from) / span) * (WIDTH - 40));
    const y = (ms: number) => Math.round(BASE - (ms / most) * (BASE - TOP));
    const points = months.map(({ day, longestMs }) => ({ x: x(dayNumber(day)), y: y(longestMs), day, longestMs }));
    const end = points.at(-1);
    const ahead = x(dayNumber(today) + AHEAD_DAYS);
    return html`<svg viewBox="0 0 ${WIDTH} ${HEIGHT}" aria-hidden="true">
      ${svg`<path class="ground" d="M0 ${BASE}H${WIDTH}"></path>
        <path class="way" d="M${points.map((point) => `${point.x} ${point.y}`).join('L')}"></path>
        ${points.map((point) => svg`<circle cx=${point.x} cy=${point.y} r="3"></circle>`)}
        <text x="2" y=${BASE + 16}>${say('today.day', { day: first.day })}</text>
        <text x=${end?.x ?? 0} y=${BASE + 16} text-anchor="middle">${say('day.today')}</text>
        ${
          brings && end
            ? svg`<path class="ahead" d="M${end.x} ${end.y}L${ahead} ${y(brings)}"></path>
              <circle class="open" cx=${ahead} cy=${y(brings)} r="4"></circle>`
            : nothing
        }`}
    </svg>`;
  }
}

function longestOf(prescription: Prescription | undefined): number {
  return Math.max(0, ...(prescription?.blocks ?? []).map(({ holdMs }) => holdMs));
}

declare global {
  interface HTMLElementTagNameMap {
    'then-and-now': ThenAndNow;
  }
}
