import { html } from 'lit';
import { customElement } from 'lit/decorators.js';
import { PlaceElement } from '../place-element.ts';
import './file-in.ts';
import './file-out.ts';

/** Everything that goes out as a file or comes in as one. */
@customElement('journal-exchange')
export class JournalExchange extends PlaceElement {
  override render() {
    return html`<file-in></file-in><file-out></file-out>
      <p class="small"><a href="#/coach">For coaches: open archers' hand-overs</a></p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'journal-exchange': JournalExchange;
  }
}
