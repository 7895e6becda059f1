import { html } from 'lit';
import { customElement } from 'lit/decorators.js';
import { PlaceElement } from '../place-element.ts';

/** How things went over weeks and years. */
@customElement('trends-page')
export class TrendsPage extends PlaceElement {
  override render() {
    return html`<h1>Trends</h1>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'trends-page': TrendsPage;
  }
}
