import { controlStyles, pageStyles } from '@larkhold/ui';
import { formatCounted } from '@larkhold/words';
import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { ReadProgramFile } from './read-program-file.ts';

/**
 * Says what is wrong with a file, or asks what to do with one whose like is in the rack.
 *
 * @prop answer what the file turned out to be
 * @event lark-answered closed; detail `{ choice }`: both, replace or none
 */
@customElement('lark-file-answer')
export class LarkFileAnswer extends LitElement {
  static override styles = [
    pageStyles,
    controlStyles,
    css`
      ol {
        margin: 1rem 0;
        border-top: 1px solid var(--rule);
      }
      li {
        padding: 0.7rem 0;
        border-bottom: 1px solid var(--rule);
        overflow-wrap: anywhere;
      }
      code {
        font-family: ui-monospace, monospace;
        font-size: 0.95em;
      }
      .row {
        margin-top: 1.2rem;
      }
      p + p {
        margin-top: 0.4rem;
      }
    `,
  ];

  @property({ attribute: false }) answer: ReadProgramFile | undefined;
  #choice: 'both' | 'replace' | 'none' = 'none';

  protected override updated(): void {
    const dialog = this.renderRoot.querySelector('dialog');
    if (dialog && !dialog.open) dialog.showModal();
  }

  override render() {
    const { answer } = this;
    if (!answer || answer.kind === 'new') return nothing;
    return html`<dialog aria-labelledby="head" @close=${this.#onClose}>
      ${answer.kind === 'broken' ? this.#problems(answer) : this.#question(answer)}
    </dialog>`;
  }

  #problems({ name, problems }: Extract<ReadProgramFile, { kind: 'broken' }>) {
    return html`<h2 id="head">This file can't be opened</h2>
      <p>${name} has ${formatCounted(problems.length, 'problem')}. The rack is as it was.</p>
      <ol>
        ${problems.map(
          ({ line, column, pointer, message }) => html`<li>
            <p class="small dim numbers">
              Line ${line}, column ${column}${pointer === '' ? nothing : html` · <code>${pointer}</code>`}
            </p>
            <p>${message}</p>
          </li>`,
        )}
      </ol>
      <button class="main" @click=${this.#close}>Close</button>`;
  }

  #question({ program, there }: Extract<ReadProgramFile, { kind: 'same' }>) {
    return html`<h2 id="head">One of these is in the rack</h2>
      <p>
        ${
          program.title === there.title
            ? html`The rack already has “${there.title}”.`
            : html`“${program.title}” is the same program as “${there.title}” in the rack.`
        }
      </p>
      <p class="dim">Keep both puts the file beside it. Replace keeps what you did with it.</p>
      <div class="row">
        <button class="main" @click=${() => this.#say('both')}>Keep both</button>
        <button @click=${() => this.#say('replace')}>Replace</button>
        <button class="quiet" @click=${this.#close}>Leave it</button>
      </div>`;
  }

  readonly #close = (): void => {
    this.renderRoot.querySelector('dialog')?.close();
  };

  /** Closed first, so that the focus goes back to where it was before the question. */
  #say(choice: 'both' | 'replace'): void {
    this.#choice = choice;
    this.#close();
  }

  readonly #onClose = (): void => {
    const choice = this.#choice;
    this.#choice = 'none';
    this.dispatchEvent(new CustomEvent('lark-answered', { detail: { choice } }));
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-file-answer': LarkFileAnswer;
  }
}
