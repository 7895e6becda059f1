import { html } from 'lit';
import { customElement } from 'lit/decorators.js';
import { PlaceElement } from '../place-element.ts';

/** Where a coach opens hand-overs. */
@customElement('coach-page')
export class CoachPage extends PlaceElement {
  override render() {
    return html`<h1>Coach</h1>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'coach-page': CoachPage;
  }
}
