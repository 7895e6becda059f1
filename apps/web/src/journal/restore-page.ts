import { say } from '@larkhold/words';
import { css, html } from 'lit';
import { customElement } from 'lit/decorators.js';
import { PlaceElement } from '../shell/place-element.ts';
import '../shell/files/file-in.ts';

/** Where a lost journal comes back from a file. */
@customElement('restore-page')
export class RestorePage extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      p {
        margin-top: 0.4rem;
        max-width: 38rem;
      }
      file-in {
        margin-top: var(--gap);
      }
    `,
  ];

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
