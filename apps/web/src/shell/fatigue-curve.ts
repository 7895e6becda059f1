import { type Prescription, predictSession } from '@larkhold/engine';
import { curveWords, presentWords, rangeWords, say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { App } from './app-context.ts';
import { outlookOf } from './outlook-of.ts';
import { PlaceElement } from './place-element.ts';
import './own-hold-offer.ts';
import { reservePicture, reserveStyles } from '@larkhold/ui';

/**
 * What a drill will do to the archer, by the model: a curve to the scale of the timeline above it, the same in words, the caution that
 * is shown with it, and what it was worked out from.
 *
 * @prop prescription the drill
 */
@customElement('fatigue-curve')
export class FatigueCurve extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    reserveStyles,
    css`
      figcaption {
        display: flex;
        justify-content: space-between;
        gap: 1rem;
        margin-top: 0.3rem;
        color: var(--dim);
        font-size: var(--text-small);
      }
      .words {
        margin-top: 0.6rem;
      }
      .caution {
        margin: 0.6rem 0;
        padding-left: 0.9rem;
        border-left: 2px solid var(--accent);
      }
    `,
  ];

  @property({ attribute: false }) prescription: Prescription | undefined;

  override render() {
    const { app, prescription } = this;
    if (!app || !prescription) return nothing;
    return html`${this.#curve(app, prescription)}
      <own-hold-offer></own-hold-offer>`;
  }

  #curve({ view }: App, prescription: Prescription) {
    const { timeline, prediction, ends, ...known } = outlookOf(view, prescription);
    if (!prediction) return html`<p>${say('outlook.noCurve')}</p>`;
    const range = ends.map((maxHoldSeconds) => predictSession(timeline, { maxHoldSeconds }));
    const words = curveWords(prediction, prescription, presentWords(), known);
    return html`<figure>
        ${reservePicture({ durationMs: timeline.durationMs, prediction, range, words })}
        <figcaption>
          <span>${say('outlook.top')}</span>
          ${prediction.failsAt ? html`<span>${say('outlook.dashed')}</span>` : nothing}
        </figcaption>
      </figure>
      <p class="words">${words}</p>
      ${range.map((one, index) => html`<p>${rangeWords(one, Math.round(ends[index] ?? 0) * 1000, prescription)}</p>`)}
      ${
        prescription.tool === undefined || prescription.tool === 'bow'
          ? nothing
          : html`<p>${say('outlook.otherTool', { tool: prescription.tool === 'light-bow' ? 'light' : prescription.tool === 'band' ? 'band' : 'other' })}</p>`
      }
      <p class="caution small">${say('outlook.caution')}</p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'fatigue-curve': FatigueCurve;
  }
}
