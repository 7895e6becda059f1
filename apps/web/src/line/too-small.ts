import { digitLegibility } from '@larkhold/runner';
import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { measureDigitPx } from '../shell/measured-digits.ts';
import { PlaceElement } from '../shell/place-element.ts';
import { pixelMmOf, sightOf } from '../shell/runner-settings-of.ts';

/** Says before a drill that its number will be too small on this screen from where the archer stands; nothing where it is large enough. */
@customElement('too-small')
export class TooSmall extends PlaceElement {
  @state() private digitPx: number | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener('resize', this.#measure);
    void this.#measure();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('resize', this.#measure);
  }

  readonly #measure = async (): Promise<void> => {
    this.digitPx = await measureDigitPx(window.innerWidth, window.innerHeight);
  };

  override render() {
    const { app, digitPx } = this;
    if (!app || !digitPx) return nothing;
    const { kit } = app.view;
    const { warning } = digitLegibility(sightOf(kit), digitPx, pixelMmOf(kit));
    return warning ? html`<p class="dim small" role="status">${warning}</p>` : nothing;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'too-small': TooSmall;
  }
}
