import { onFingersWeightLbf } from '@larkhold/engine';
import { formatLength, formatWeight, pieces, say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { PlaceElement } from '../../shell/place-element.ts';
import { hrefOf } from '../../shell/routing.ts';

/** What a bow can be marked with and what the estimate takes, pounds-force and inches. */
const MOST_LBF = 100;
const LEAST_DRAW_INCHES = 15;

/** Where the kit has no weight on the fingers: an estimate from the bow's marked weight and the draw length, used only when the archer agrees. */
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
    const toKit = html`<a href=${hrefOf('kit')}>${say('load.inKit')}</a>`;
    if (drawLengthIn === undefined || drawLengthIn < LEAST_DRAW_INCHES) {
      return html`<p>${pieces('load.noLength', { link: toKit })}</p>`;
    }
    const isGood = markedLbf !== undefined && markedLbf > 0 && markedLbf <= MOST_LBF;
    const lbf = isGood ? Math.round(onFingersWeightLbf(markedLbf, drawLengthIn) * 2) / 2 : undefined;
    return html`<p>${pieces('load.noWeight', { link: toKit })}</p>
      <div class="row">
        <label
          >${say('load.marked')}
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
            : html`<button @click=${() => app.act.changeKit({ drawWeightLbf: lbf })}>${say('load.take', { weight: formatWeight(lbf, units) })}</button>`
        }
      </div>
      ${
        lbf === undefined
          ? nothing
          : html`<p role="status">${say('load.about70', { weight: formatWeight(lbf, units), length: formatLength(drawLengthIn, units), caution: say('load.fingersCaution') })}</p>`
      }`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'on-fingers-estimate': OnFingersEstimate;
  }
}
