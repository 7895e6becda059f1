import { say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { PlaceElement } from '../shell/place-element.ts';

/** The shorter side of a bank card, millimetres. @source ISO/IEC 7810:2019, ID-1: 85.60 mm by 53.98 mm */
export const CARD_SIDE_MM = 53.98;
const LEAST_PX = 120;
const MOST_PX = 560;

/**
 * Measures the screen's pixels against a bank card, as no browser tells their size.
 *
 * @prop pixelMm the size of a CSS pixel as it is assumed now, millimetres
 * @prop isMeasured whether that was measured
 * @event card-size measured or taken back; detail: millimetres a pixel, or null
 */
@customElement('lark-card-size')
export class LarkCardSize extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      svg {
        display: block;
        max-width: 100%;
        margin: 0.8rem 0;
      }
      rect {
        fill: var(--accent);
      }
      input[type='range'] {
        width: min(100%, 35rem);
      }
      .row {
        margin: 0.6rem 0 1rem;
      }
    `,
  ];

  @property({ attribute: false }) pixelMm = 0.265;
  @property({ attribute: false }) isMeasured = false;
  @state() private barPx: number | undefined;

  override render() {
    const px = this.#px;
    return html`<details>
      <summary>${say('kit.screenSize', { measured: this.isMeasured ? 'yes' : 'other' })}</summary>
      <p class="dim small">
        ${say('kit.holdCard')}
      </p>
      <svg width=${px} height="24" aria-hidden="true"><rect width=${px} height="24"></rect></svg>
      <label
        >${say('kit.barLength')}
        <input
          type="range"
          min=${LEAST_PX}
          max=${MOST_PX}
          step="1"
          .value=${String(Math.round(px))}
          @input=${(event: Event) => {
            if (event.target instanceof HTMLInputElement) this.barPx = Number(event.target.value);
          }}
        />
      </label>
      <div class="row">
        <button @click=${() => this.#tell(CARD_SIDE_MM / this.#px)}>${say('kit.asLong')}</button>
        ${this.isMeasured ? html`<button class="quiet" @click=${() => this.#tell(null)}>${say('kit.takeBack')}</button>` : nothing}
      </div>
    </details>`;
  }

  /** Length of the bar as it is. */
  get #px(): number {
    return this.barPx ?? Math.min(MOST_PX, Math.max(LEAST_PX, CARD_SIDE_MM / this.pixelMm));
  }

  #tell(pixelMm: number | null): void {
    this.barPx = undefined;
    this.dispatchEvent(new CustomEvent<number | null>('card-size', { detail: pixelMm }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-card-size': LarkCardSize;
  }
}
