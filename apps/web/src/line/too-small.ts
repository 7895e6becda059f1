import { digitLegibility } from '@larkhold/runner';
import { say } from '@larkhold/words';
import { html, nothing } from 'lit';
import { customElement } from 'lit/decorators.js';
import { DigitSize } from '../shell/digit-size.ts';
import { PlaceElement } from '../shell/place-element.ts';
import { pixelMmOf, sightOf } from '../shell/runner-settings-of.ts';

/** Says before a drill that its number will be too small on this screen from where the archer stands; nothing where it is large enough. */
@customElement('too-small')
export class TooSmall extends PlaceElement {
  readonly #digits = new DigitSize(this, () => this.app?.view.kit.layout);

  override render() {
    const { app } = this;
    const { digitPx } = this.#digits;
    if (!app || !digitPx) return nothing;
    const { kit } = app.view;
    const { warning } = digitLegibility(sightOf(kit), digitPx, pixelMmOf(kit));
    if (!warning) return nothing;
    return html`<p class="dim small" role="status">${warning} ${kit.layout === 'bow' ? html`<a href="#/kit/display">${say('kit.tryNumbers')}</a>` : nothing}</p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'too-small': TooSmall;
  }
}
