import { say } from '@larkhold/words';
import { html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { PlaceElement } from '../../shell/place-element.ts';
import './file-in.ts';
import './file-out.ts';

/**
 * Everything that goes out as a file or comes in as one.
 *
 * @prop settle writes down what was just typed, so that a file holds it
 */
@customElement('journal-exchange')
export class JournalExchange extends PlaceElement {
  @property({ attribute: false }) settle: () => Promise<void> = async () => undefined;

  override render() {
    return html`<file-in .settle=${this.settle}></file-in><file-out .settle=${this.settle}></file-out>
      <p class="small"><a href="#/coach">${say('file.forCoaches')}</a></p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'journal-exchange': JournalExchange;
  }
}
