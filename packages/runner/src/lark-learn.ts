import { formatRow, pressWords, say } from '@larkhold/words';
import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { buttonStyles, lookStyles } from './glance-look.ts';
import { createPressGuard, type PressSource } from './press-source.ts';
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
 * Learns what an archer presses for one thing, and tries it: it shows what it heard. At first it is one line that says what is set; Learn opens it.
 *
 * @prop label what is being learned, as 'Let down now'
 * @prop codes what is set: key codes, and codes of press sources
 * @prop sources what is pressed beside keys: gamepads, a headset, claps; listened to only while it learns or tries
 * @prop theme colours
 * @event lark-learned a press was learned or removed; detail `{ codes }`
 * @csspart heard what was heard last
 * @cssprop --lark-ground background
 * @cssprop --lark-ink text and the bow
 * @cssprop --lark-dim text that matters less
 * @cssprop --lark-faint lines
 * @cssprop --lark-accent what matters now
 * @cssprop --lark-on-accent text on the accent
 * @cssprop --lark-raised buttons
 * @cssprop --lark-font family of the text
 */
@customElement('lark-learn')
export class LarkLearn extends LitElement {
  static override styles = [
    lookStyles,
    buttonStyles,
    css`
      :host {
        display: block;
        padding: 0.6rem 0.8rem;
      }
      .row {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 0.6rem;
      }
      .what {
        display: grid;
        flex: 1 1 9rem;
        min-width: 0;
      }
      .label {
        font-weight: 600;
      }
      .set-now {
        color: var(--dim);
        font-size: 0.94em;
        overflow-wrap: anywhere;
      }
      .row + .row {
        margin-top: 0.6rem;
      }
      /* Pressed by a hand without a bow in it. */
      button {
        min-height: 48px;
        min-width: 48px;
        font-size: 1rem;
      }
      .heard {
        margin: 0.4rem 0 0;
        color: var(--dim);
      }
      .heard:empty {
        margin: 0;
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
  /** Whether what is set can be removed and tried; once opened it stays so. */
  @state() private isOpen = false;
  @state() private doing: 'learning' | 'trying' | undefined;
  @state() private heard: string | undefined;
  @state() private heardCount = 0;
  @state() private trouble = '';

  #endListening: (() => void)[] = [];
  readonly #counts = createPressGuard(() => performance.now());

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stop();
  }

  override render() {
    return html`<div class="row">
        <span class="what"
          ><span class="label" id="label">${this.label}</span>${this.isOpen ? nothing : html`<span class="set-now">${formatRow(this.codes.map((code) => pressWords(code))) || say('learn.noneSet')}</span>`}</span
        >
        ${this.#button('learning', say('learn.learn'))}
      </div>
      ${this.isOpen ? this.#inside() : nothing}
      <p class="heard ${this.heard ? 'set' : ''}" part="heard" role="status">${this.#heardWords()}</p>`;
  }

  #inside() {
    return html`<div class="row">
      ${this.codes.map(
        (code) => html`<button
          aria-label=${say('learn.take', { press: pressWords(code), action: this.label })}
          @click=${() => this.#tell(this.codes.filter((other) => other !== code))}
        >
          ${pressWords(code)} <span aria-hidden="true">×</span>
        </button>`,
      )}
      ${this.#button('trying', say('learn.try'))}
    </div>`;
  }

  #button(what: 'learning' | 'trying', words: string) {
    const isDoing = this.doing === what;
    return html`<button
      class=${isDoing ? 'main' : ''}
      aria-pressed=${isDoing ? 'true' : 'false'}
      aria-describedby="label"
      @click=${(event: MouseEvent) => this.#toggle(what, event)}
    >
      ${isDoing ? say('learn.done') : words}
    </button>`;
  }

  #heardWords() {
    if (this.trouble) return this.trouble;
    const { heard } = this;
    if (heard) {
      const press = pressWords(heard);
      const times = this.heardCount;
      const said = times > 1 ? say('learn.heardTimes', { press, times }) : say('learn.heard', { press });
      if (this.doing !== 'trying') return said;
      return `${said} ${say(this.codes.includes(heard) ? 'learn.isSet' : 'learn.notSet')}`;
    }
    return this.doing ? say('learn.pressNow') : nothing;
  }

  #toggle(what: 'learning' | 'trying', event: MouseEvent): void {
    const wasDoing = this.doing;
    this.#stop();
    if (wasDoing === what) return;
    this.isOpen = true;
    this.doing = what;
    this.heard = undefined;
    this.trouble = '';
    // The press that is learned must not press this button again; who came by keyboard keeps the place, and #onKey swallows the key.
    if (event.detail > 0 && event.currentTarget instanceof HTMLElement) event.currentTarget.blur();
    window.addEventListener('keydown', this.#onKey, { capture: true });
    this.#endListening = this.sources.map((source) =>
      source.listen(
        (code) => this.#learn(code),
        (message) => {
          this.trouble = message ?? '';
        },
      ),
    );
  }

  readonly #onKey = (event: KeyboardEvent): void => {
    // Every other key is learned here, Enter on the button too: without this one, a keyboard alone could not end it.
    if (event.code === 'Escape' && !event.repeat) this.#stop();
    if (event.repeat || KEPT.has(event.code) || event.code === '') return;
    event.preventDefault();
    event.stopPropagation();
    this.#learn(event.code);
  };

  #learn(code: string): void {
    if (!this.#counts(code)) return;
    this.heardCount = this.heard === code ? this.heardCount + 1 : 1;
    this.heard = code;
    if (this.doing === 'learning' && !this.codes.includes(code)) this.#tell([...this.codes, code]);
  }

  #stop(): void {
    this.doing = undefined;
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
  interface HTMLElementEventMap {
    'lark-learned': CustomEvent<{ codes: string[] }>;
  }
}
