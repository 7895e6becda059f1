import { say } from '@larkhold/words';
import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import '../shell/files/file-in.ts';
import '../shell/files/file-out.ts';
import { PlaceElement } from '../shell/place-element.ts';

/**
 * The one page for files of every kind: what comes in is shown before it does anything, and what can be saved says what it is for.
 *
 * @prop incoming files that were picked somewhere else
 */
@customElement('files-page')
export class FilesPage extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      file-in {
        margin-top: 0.8rem;
      }
      @media (min-width: 68rem) {
        .two {
          display: grid;
          grid-template-columns: repeat(2, minmax(0, 1fr));
          gap: calc(var(--gap) * 2.5);
          align-items: start;
        }
      }
    `,
  ];

  @property({ attribute: false }) incoming: readonly File[] = [];

  override render() {
    return html`<h1>${say('files.title')}</h1>
      <div class="two">
        <section aria-labelledby="in">
          <h2 id="in">${say('files.in')}</h2>
          <p class="dim">${say('files.inAbout')}</p>
          <file-in .incomingFiles=${this.incoming}></file-in>
        </section>
        <section aria-labelledby="out">
          <h2 id="out">${say('files.out')}</h2>
          <file-out></file-out>
          <p class="small"><a href="#/coach">${say('file.forCoaches')}</a></p>
        </section>
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'files-page': FilesPage;
  }
}
