import { monthsBeside, monthsOf } from '@larkhold/engine';
import { limbPath } from '@larkhold/ui';
import { formatMonth, say } from '@larkhold/words';
import { css, html, nothing, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { PlaceElement } from '../shell/place-element.ts';

/** A month's stroke in its own units. */
const BOX = { width: 16, height: 36 } as const;
const TALL = 32;

/**
 * Twelve months, each a stroke as tall as the time at full draw in it: any of them is one press away.
 *
 * @prop month the one that is shown, 'yyyy-mm'
 * @event lark-month another was chosen; detail `{ month }`
 */
@customElement('year-strip')
export class YearStrip extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      :host {
        margin-top: var(--gap);
        container-type: inline-size;
      }
      ol {
        display: grid;
        grid-template-columns: repeat(12, minmax(0, 1fr));
        border-bottom: 1px solid var(--rule);
      }
      button {
        display: grid;
        justify-items: center;
        align-content: end;
        gap: 0.1rem;
        width: 100%;
        min-width: 0;
        min-height: 4.2rem;
        padding: 0 0 0.15rem;
        border: 0;
        border-bottom: 3px solid transparent;
        border-radius: 0;
        color: var(--dim);
        font-size: min(0.85rem, 5.2cqw);
        font-weight: 400;
      }
      button[aria-pressed='true'] {
        border-bottom-color: var(--accent);
        background: transparent;
        color: var(--ink);
        font-weight: 700;
        forced-color-adjust: auto;
      }
      button:hover {
        color: var(--ink);
        text-decoration: underline;
      }
      svg {
        width: min(1.2rem, 100%);
        height: 2.6rem;
        overflow: visible;
      }
      path {
        fill: var(--dim);
      }
      [aria-pressed='true'] path {
        fill: var(--ink);
      }
      .nothing {
        fill: none;
        stroke: var(--dim);
        stroke-width: 2.4;
        stroke-linecap: round;
      }
      @media (forced-colors: active) {
        path {
          fill: ButtonText;
        }
        .nothing {
          fill: none;
          stroke: ButtonText;
        }
        button:not([aria-pressed='true']) {
          border-bottom-color: Canvas;
        }
      }
    `,
  ];

  @property() month = '';

  override render() {
    const { app, month } = this;
    if (!app || month === '') return nothing;
    const { heldMs, last } = monthsOf(app.view.journal, app.view.today);
    const months = monthsBeside(month, last);
    const mostMs = Math.max(1, ...months.map((one) => heldMs.get(one) ?? 0));
    return html`<ol aria-label=${say('month.months')}>
      ${months.map((one) => {
        const ms = heldMs.get(one) ?? 0;
        return html`<li>
          <button
            aria-pressed=${one === month}
            aria-label=${say('month.one', { month: formatMonth(one), ms })}
            @click=${() => this.dispatchEvent(new CustomEvent('lark-month', { detail: { month: one } }))}
          >
            <svg viewBox="0 0 ${BOX.width} ${BOX.height}" aria-hidden="true">
              ${
                ms > 0
                  ? svg`<path d=${limbPath(BOX.width / 2, BOX.height, Math.max(4, (ms / mostMs) * TALL), 1.3)}></path>`
                  : svg`<path class="nothing" d="M${BOX.width / 2} ${BOX.height - 2}v0.01"></path>`
              }
            </svg>
            <span aria-hidden="true">${formatMonth(one, 'first')}</span>
          </button>
        </li>`;
      })}
    </ol>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'year-strip': YearStrip;
  }
}
