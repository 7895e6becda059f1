import { parseQuickLine, type QuickLineProblem } from '@larkhold/engine';
import { controlStyles, pageStyles } from '@larkhold/ui';
import { problemWords, say } from '@larkhold/words';
import { css, html, LitElement, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';

/**
 * Writes a block as one line.
 *
 * @event quick-block a line was given; detail is the block, without a title
 */
@customElement('lark-quick-line')
export class LarkQuickLine extends LitElement {
  static override styles = [
    pageStyles,
    controlStyles,
    css`
      form {
        display: flex;
        flex-wrap: wrap;
        gap: 0.6rem;
        align-items: end;
      }
      label {
        flex: 1 1 14rem;
        min-width: 0;
        font-weight: 600;
      }
      input {
        width: 100%;
      }
      mark {
        background: none;
        color: inherit;
        font-weight: 700;
        text-decoration: underline wavy var(--accent) 2px;
      }
      .line {
        white-space: pre-wrap;
        overflow-wrap: anywhere;
      }
    `,
  ];

  @state() private text = '';
  @state() private problems: readonly QuickLineProblem[] = [];

  override render() {
    return html`<form @submit=${this.#onSubmit}>
        <label for="line"
          >${say('bench.quickLine')}
          <input
            id="line"
            autocomplete="off"
            autocapitalize="off"
            spellcheck="false"
            maxlength="400"
            .value=${this.text}
            aria-invalid=${this.problems.length > 0 ? 'true' : 'false'}
            aria-describedby="said"
            @input=${this.#onInput}
        /></label>
        <button>${say('bench.addAsBlock')}</button>
      </form>
      <div id="said" class="small" role="status">
        ${
          this.problems.length === 0
            ? html`<p class="dim">${say('bench.suchAs', { example: '3x10 hold 30 rest 2x, set rest 2m' })}</p>`
            : this.problems.map((problem) => this.#problem(problem))
        }
      </div>`;
  }

  #problem(problem: QuickLineProblem) {
    const { text } = this;
    const { start, end } = problem;
    const marked = text.slice(start, end);
    return html`${
      marked === ''
        ? nothing
        : html`<p class="line">${text.slice(0, start)}<mark>${marked}</mark>${text.slice(end)}</p>`
    }
      <p>${problemWords(problem)}</p>`;
  }

  readonly #onInput = ({ target }: Event): void => {
    if (!(target instanceof HTMLInputElement)) return;
    this.text = target.value;
    // Once something was wrong, the archer sees at once when it is right.
    if (this.problems.length > 0) this.problems = problemsOf(this.text);
  };

  readonly #onSubmit = (event: Event): void => {
    event.preventDefault();
    const parsed = parseQuickLine(this.text);
    if (!parsed.ok) {
      this.problems = parsed.problems;
      this.renderRoot.querySelector('input')?.focus();
      return;
    }
    this.text = '';
    this.problems = [];
    this.dispatchEvent(new CustomEvent('quick-block', { detail: parsed.block }));
  };
}

function problemsOf(text: string): readonly QuickLineProblem[] {
  const parsed = parseQuickLine(text);
  return parsed.ok ? [] : parsed.problems;
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-quick-line': LarkQuickLine;
  }
}
