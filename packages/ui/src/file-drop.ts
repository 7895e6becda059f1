import { say } from '@larkhold/words';
import { css, html, LitElement } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { controlStyles, pageStyles } from './page-styles.ts';

/**
 * Takes files, picked or dropped.
 *
 * @prop words on the button
 * @prop accept which files the picker offers
 * @prop plain a button alone, where a frame would be too much
 * @prop isMany takes more than one
 * @event files-take the files; detail is a list of `File`
 */
@customElement('file-drop')
export class FileDrop extends LitElement {
  static override styles = [
    pageStyles,
    controlStyles,
    css`
      div {
        display: flex;
        flex-wrap: wrap;
        gap: 0.6rem 1rem;
        align-items: center;
        padding: 0.8rem;
        border: 1.5px dashed var(--faint);
        border-radius: var(--radius);
        color: var(--dim);
      }
      :host([plain]) div {
        padding: 0;
        border: 0;
      }
      :host([plain]) span {
        display: none;
      }
      .over {
        border-color: var(--accent);
        color: var(--ink);
      }
    `,
  ];

  @property() words = 'Open a file';
  @property() accept = '.json,application/json';
  @property({ type: Boolean }) isMany = false;
  @property({ type: Boolean, reflect: true }) plain = false;
  @state() private isOver = false;

  override render() {
    return html`<div
      class=${this.isOver ? 'over' : ''}
      @dragover=${(event: DragEvent) => this.#hover(event, true)}
      @dragleave=${(event: DragEvent) => this.#hover(event, false)}
      @drop=${this.#onDrop}
    >
      <button type="button" @click=${() => this.renderRoot.querySelector('input')?.click()}>${this.words}</button>
      <input
        class="visually-hidden"
        type="file"
        tabindex="-1"
        aria-label=${this.words}
        accept=${this.accept}
        ?multiple=${this.isMany}
        @change=${this.#onPick}
      />
      <span>${say('field.drop', { files: this.isMany ? 'files' : 'other' })}</span>
    </div>`;
  }

  #hover(event: DragEvent, isOver: boolean): void {
    event.preventDefault();
    this.isOver = isOver;
  }

  readonly #onDrop = (event: DragEvent): void => {
    this.#hover(event, false);
    this.#give([...(event.dataTransfer?.files ?? [])]);
  };

  readonly #onPick = (event: Event): void => {
    if (!(event.target instanceof HTMLInputElement)) return;
    this.#give([...(event.target.files ?? [])]);
    // So that the same file can be picked again.
    event.target.value = '';
  };

  #give(files: readonly File[]): void {
    const detail = this.isMany ? files : files.slice(0, 1);
    if (detail.length > 0) this.dispatchEvent(new CustomEvent('files-take', { detail, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'file-drop': FileDrop;
  }
  interface HTMLElementEventMap {
    'files-take': CustomEvent<readonly File[]>;
  }
}
