import { controlStyles, pageStyles } from '@larkhold/ui';
import { pieces, problemWords, say } from '@larkhold/words';
import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import '../shell/program-swap.ts';
import { inPlaceOf, type ReadProgramFile } from '@larkhold/engine';

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
      /* In sight however long the list above is. */
      .foot {
        position: sticky;
        bottom: calc(-1 * var(--gap));
        margin-bottom: calc(-1 * var(--gap));
        padding: 0.6rem 0 var(--gap);
        background: var(--ground);
      }
    `,
  ];

  @property({ attribute: false }) answer: ReadProgramFile | undefined;
  #choice: 'both' | 'replace' | 'none' = 'none';

  protected override updated(): void {
    const dialog = this.renderRoot.querySelector('dialog');
    if (!dialog || dialog.open) return;
    dialog.showModal();
    // The focus is on the first button, at the end: what it is about is read first.
    dialog.scrollTop = 0;
  }

  override render() {
    const { answer } = this;
    if (!answer || answer.kind === 'new') return nothing;
    return html`<dialog aria-labelledby="head" @close=${this.#onClose}>
      ${answer.kind === 'broken' ? this.#problems(answer) : this.#question(answer)}
    </dialog>`;
  }

  #problems({ name, problems }: Extract<ReadProgramFile, { kind: 'broken' }>) {
    return html`<h2 id="head">${say('rack.cannotOpen')}</h2>
      <p>${say('rack.hasProblems', { file: name, n: problems.length })}</p>
      <ol>
        ${problems.map((problem) => {
          const { line, column, pointer } = problem;
          return html`<li>
            <p class="small dim numbers">
              ${
                pointer === ''
                  ? say('rack.at', { line, column })
                  : pieces('rack.atPointer', { line, column, pointer: html`<code>${pointer}</code>` })
              }
            </p>
            <p>${problemWords(problem)}</p>
          </li>`;
        })}
      </ol>
      <div class="foot"><button class="main" @click=${this.#close}>${say('rack.close')}</button></div>`;
  }

  #question({ program, there }: Extract<ReadProgramFile, { kind: 'same' }>) {
    return html`<h2 id="head">${say('rack.oneThere')}</h2>
      <p>
        ${
          program.title === there.title
            ? say('rack.sameTitle', { title: there.title })
            : say('rack.sameProgram', { title: program.title, there: there.title })
        }
      </p>
      <p class="dim">${say('rack.bothAbout')}</p>
      <program-swap .mine=${there} .theirs=${inPlaceOf(program, there)}></program-swap>
      <div class="row">
        <button class="main" @click=${() => this.#say('both')}>${say('rack.keepBoth')}</button>
        <button @click=${() => this.#say('replace')}>${say('rack.replace')}</button>
        <button class="quiet" @click=${this.#close}>${say('rack.leave')}</button>
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
