import { ON_FINGERS_CAUTION, onFingersWeightLbf } from '@larkhold/engine';
import { formatLength, formatWeight } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { PlaceElement } from '../../shell/place-element.ts';
import { hrefOf } from '../../shell/routing.ts';

/** What a bow can be marked with and what the estimate takes, pounds-force and inches. */
const MOST_LBF = 100;
const LEAST_DRAW_INCHES = 15;

/** Where the kit has no weight on the fingers: an estimate from what the bow is marked with and the draw length, taken only when asked. */
@customElement('on-fingers-estimate')
export class OnFingersEstimate extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      p,
      .row {
        margin-top: 0.7rem;
      }
      .row {
        align-items: end;
      }
      input {
        width: 6.5rem;
      }
    `,
  ];

  @state() private markedLbf: number | undefined;

  override render() {
    const { app, markedLbf } = this;
    if (!app || app.view.kit.drawWeightLbf !== undefined || app.view.kit.bow === 'compound') return nothing;
    const { drawLengthIn, units } = app.view.kit;
    const toKit = html`<a href=${hrefOf('kit')}>Put it in the kit</a>`;
    if (drawLengthIn === undefined || drawLengthIn < LEAST_DRAW_INCHES) {
      return html`<p>The kit does not say what you hold on the fingers. ${toKit}, or your draw length for an estimate.</p>`;
    }
    const isGood = markedLbf !== undefined && markedLbf > 0 && markedLbf <= MOST_LBF;
    const lbf = isGood ? Math.round(onFingersWeightLbf(markedLbf, drawLengthIn) * 2) / 2 : undefined;
    return html`<p>The kit does not say what you hold on the fingers. ${toKit}, or estimate it:</p>
      <div class="row">
        <label
          >Bow marked with, lb at 28 in
          <input
            type="number"
            inputmode="decimal"
            min="1"
            max=${MOST_LBF}
            step="0.5"
            @input=${(event: Event) => {
              const { target } = event;
              this.markedLbf =
                target instanceof HTMLInputElement && target.value !== '' ? Number(target.value) : undefined;
            }}
          />
        </label>
        ${
          lbf === undefined || lbf < 1
            ? nothing
            : html`<button @click=${() => app.act.changeKit({ drawWeightLbf: lbf })}>Take ${formatWeight(lbf, units)}</button>`
        }
      </div>
      ${
        lbf === undefined
          ? nothing
          : html`<p role="status">About ${formatWeight(lbf, units)} at ${formatLength(drawLengthIn, units)}. ${ON_FINGERS_CAUTION}</p>`
      }`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'on-fingers-estimate': OnFingersEstimate;
  }
}
