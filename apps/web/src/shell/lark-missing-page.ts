import { say } from '@larkhold/words';
import { html } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { PlaceElement } from './place-element.ts';
import { hrefOf } from './routing.ts';

/**
 * Shown in place of a page whose part of the app could not be fetched.
 *
 * @prop fetchAgain tries once more; resolves to whether the part is there now
 */
@customElement('lark-missing-page')
export class LarkMissingPage extends PlaceElement {
  @property({ attribute: false }) fetchAgain: () => Promise<boolean> = async () => false;
  @state() private isFetching = false;

  override render() {
    return html`<h1 tabindex="-1">${say('app.pageMissing')}</h1>
      <p role="status">${say(this.isFetching ? 'app.fetching' : 'app.pageMissingAbout')}</p>
      <div class="row">
        <button class="main" ?disabled=${this.isFetching} @click=${this.#again}>${say('odd.again')}</button>
        <button @click=${() => location.reload()}>${say('app.loadAgain')}</button>
        <a class="button" href=${hrefOf('line')}>${say('odd.toLine')}</a>
      </div>`;
  }

  readonly #again = async (): Promise<void> => {
    this.isFetching = true;
    await this.fetchAgain();
    this.isFetching = false;
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-missing-page': LarkMissingPage;
  }
}
