import { say } from '@larkhold/words';
import { html } from 'lit';
import { customElement } from 'lit/decorators.js';
import { PlaceElement } from '../shell/place-element.ts';
import '../shell/files/file-in.ts';

/** Where a lost journal comes back from a file. */
@customElement('restore-page')
export class RestorePage extends PlaceElement {
  override render() {
    return html`<h1>${say('lost.restoreTitle')}</h1>
      <p>${say('lost.restoreAbout')}</p>
      <file-in></file-in>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'restore-page': RestorePage;
  }
}
