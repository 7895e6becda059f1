import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { buttonStyles, lookStyles } from './glance-look.ts';
import type { PressSource } from './press-source.ts';
import { pressWords } from './press-words.ts';
import type { RunnerTheme } from './runner-settings.ts';

/** Keys that a page needs for itself, or that cannot be heard alone. */
const KEPT = new Set([
  'Tab',
  'Escape',
  'F5',
  'ShiftLeft',
  'ShiftRight',
  'ControlLeft',
  'ControlRight',
  'AltLeft',
  'AltRight',
]);

/**
 * Learns what an archer presses for one thing, and tries it: it shows what it heard.
 *
 * @prop label what is being learned, as 'Let down now'
 * @prop codes what is set: key codes, and codes of press sources
 * @prop sources what is pressed beside keys: gamepads, a headset, claps
 * @prop theme colours
 * @event lark-learned a press was learned or taken away; detail `{ codes }`
 * @csspart heard what was heard last
 */
@customElement('lark-learn')
export class LarkLearn extends LitElement {
  static override styles = [
    lookStyles,
    buttonStyles,
    css`
      :host {
        display: block;
        padding: 0.8rem;
      }
      .row {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 0.6rem;
      }
      .label {
        flex: 1 1 10rem;
        font-weight: 600;
      }
      .heard {
        min-height: 1.4em;
        margin: 0.4rem 0 0;
        color: var(--dim);
      }
      .heard.set {
        color: var(--ink);
        font-weight: 600;
      }
    `,
  ];

  @property() label = '';
  @property({ attribute: false }) codes: readonly string[] = [];
  @property({ attribute: false }) sources: readonly PressSource[] = [];
  @property({ reflect: true }) theme: RunnerTheme = 'system';
  @state() private isLearning = false;
  @state() private heard: string | undefined;

  #endListening: (() => void)[] = [];

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stop();
  }

  override render() {
    return html`<div class="row">
        <span class="label" id="label">${this.label}</span>
        ${this.codes.map(
          (code) => html`<button
            aria-label="Take ${pressWords(code)} away from ${this.label}"
            @click=${() => this.#tell(this.codes.filter((other) => other !== code))}
          >
            ${pressWords(code)} <span aria-hidden="true">×</span>
          </button>`,
        )}
        <button
          class=${this.isLearning ? 'main' : ''}
          aria-pressed=${this.isLearning ? 'true' : 'false'}
          aria-describedby="label"
          @click=${this.#onToggle}
        >
          ${this.isLearning ? 'Done' : 'Learn'}
        </button>
      </div>
      <p class="heard ${this.heard ? 'set' : ''}" part="heard" role="status">${this.#heardWords()}</p>`;
  }

  #heardWords() {
    if (this.heard) return `Heard: ${pressWords(this.heard)}.`;
    return this.isLearning ? 'Press the key or pedal now.' : nothing;
  }

  readonly #onToggle = (event: MouseEvent): void => {
    if (this.isLearning) {
      this.#stop();
      return;
    }
    this.isLearning = true;
    this.heard = undefined;
    // The press that is learned must not press this button again.
    if (event.currentTarget instanceof HTMLElement) event.currentTarget.blur();
    window.addEventListener('keydown', this.#onKey, { capture: true });
    this.#endListening = this.sources.map((source) => source.listen((code) => this.#learn(code)));
  };

  readonly #onKey = (event: KeyboardEvent): void => {
    if (event.repeat || KEPT.has(event.code) || event.code === '') return;
    event.preventDefault();
    event.stopPropagation();
    this.#learn(event.code);
  };

  #learn(code: string): void {
    this.heard = code;
    if (!this.codes.includes(code)) this.#tell([...this.codes, code]);
  }

  #stop(): void {
    this.isLearning = false;
    window.removeEventListener('keydown', this.#onKey, { capture: true });
    for (const end of this.#endListening.splice(0)) end();
  }

  #tell(codes: readonly string[]): void {
    this.codes = codes;
    this.dispatchEvent(new CustomEvent('lark-learned', { detail: { codes }, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-learn': LarkLearn;
  }
}
