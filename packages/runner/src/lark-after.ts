import { phrases } from '@larkhold/cues';
import {
  correctOutcome,
  correctWhy,
  type DrillRecord,
  heldOf,
  type Outcome,
  type RepRecord,
  settleSeen,
} from '@larkhold/engine';
import '@larkhold/ui/ribbon';
import { isAsAsked, type ShortReason } from '@larkhold/ui/ribbon';
import { drillWords, placeOfRep, say } from '@larkhold/words';
import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { afterStyles } from './after-styles.ts';
import { AskedAloud, type DrillSound } from './asked-aloud.ts';
import { browserEnvironment } from './browser-environment.ts';
import type { AfterDrill } from './drill-events.ts';
import { effortStrip } from './effort-strip.ts';
import { buttonStyles, lookStyles } from './glance-look.ts';
import { becomeFocusable, isForElement, type KeysFrom } from './keys-from.ts';
import type { Said } from './press-sound.ts';
import { createPressGuard, type PressSource } from './press-source.ts';
import type { RunnerEnvironment } from './runner-environment.ts';
import { defaultRunnerSettings, type RunnerSettings, type RunnerTheme } from './runner-settings.ts';
import { spokenEffort, spokenPain, spokenQuestion, spokenRep } from './spoken-questions.ts';

/** Where a pedal begins to choose. */
const MIDDLE_EFFORT = 5;
/** How soon after a one a zero makes it ten, milliseconds. */
const TEN_MS = 1500;
const NO_ANSWER: Said = { kind: 'answer', words: phrases.noAnswer };
const REASONS = ['form', 'tired', 'interrupted'] as const;

/**
 * Asks how a drill was, and lets the archer put reps right. Everything may be left out.
 *
 * @prop record the drill as it was logged
 * @prop theme colours
 * @prop flipped turns the closing frame over, to be read in a mirror
 * @prop keys the archer's keys: those of `moreRest` and `letDownNow` go up and down in an answer, those of `begin` go on to the next
 * @prop keysFrom whose keys are heard: its own while it has the focus, or `page` for every key
 * @prop sources what is pressed beside keys and screen
 * @prop sound how the drill sounded: with words, and with more than the least said, the questions are asked aloud; they are silent where left out
 * @prop environment sound and frames; the browser's where left out
 * @event lark-after-done saved or skipped; detail `{ effort?, pain?, note?, reps }`
 * @cssprop --lark-ground background
 * @cssprop --lark-ink text and the bow
 * @cssprop --lark-dim text that matters less
 * @cssprop --lark-faint lines
 * @cssprop --lark-accent what matters now
 * @cssprop --lark-on-accent text on the accent
 * @cssprop --lark-raised buttons
 * @cssprop --lark-font family of the text
 */
@customElement('lark-after')
export class LarkAfter extends LitElement {
  static override styles = [lookStyles, buttonStyles, afterStyles];

  @property({ attribute: false }) record: DrillRecord | undefined;
  @property({ reflect: true }) theme: RunnerTheme = 'system';
  @property({ type: Boolean }) flipped = false;
  @property({ attribute: false }) keys: RunnerSettings['keys'] = defaultRunnerSettings.keys;
  @property({ attribute: false }) sources: readonly PressSource[] = [];
  @property({ attribute: 'keys-from' }) keysFrom: KeysFrom = 'focus';
  @property({ attribute: false }) sound: DrillSound | undefined;
  @property({ attribute: false }) environment: RunnerEnvironment | undefined;
  /** The question that a pedal answers; a number is the rep at that place. */
  @state() private asked: 'effort' | 'pain' | number = 'effort';
  @state() private effort: number | undefined;
  @state() private pain: boolean | undefined;
  @state() private note = '';
  @state() private corrected: DrillRecord | undefined;
  /** The rep whose stroke was pressed. */
  @state() private picked: number | undefined;
  /** Whether the closing frame was sent away before it goes by itself. */
  @state() private isRead = false;

  #endListening: (() => void)[] = [];
  #typedOneAtMs: number | undefined;
  readonly #aloud = new AskedAloud();
  readonly #counts = createPressGuard(() => performance.now());

  override connectedCallback(): void {
    super.connectedCallback();
    becomeFocusable(this, this.keysFrom);
    window.addEventListener('keydown', this.#onKey);
    this.#listen();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('keydown', this.#onKey);
    this.#hush();
    this.#aloud.end();
  }

  #listen(): void {
    this.#hush();
    if (this.isConnected)
      this.#endListening = this.sources.map((source) => source.listen((code) => void this.#hear(code)));
  }

  #hush(): void {
    for (const end of this.#endListening.splice(0)) end();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('sources')) this.#listen();
    if (!changed.has('record')) return;
    this.asked = 'effort';
    this.picked = undefined;
    this.isRead = false;
    this.corrected = this.record;
    this.effort = this.record?.effort;
    this.pain = this.record?.pain;
    this.note = this.record?.note ?? '';
    this.#aloud.end();
    if (this.record && this.sound && this.#asksAloud)
      this.#aloud.begin(this.environment ?? browserEnvironment(), this.sound);
  }

  get #asksAloud(): boolean {
    return this.sound !== undefined && this.sound.voice !== 'tones' && this.sound.spoken !== 'least';
  }

  protected override updated(changed: PropertyValues): void {
    if (typeof this.asked === 'number' && changed.has('asked')) {
      this.renderRoot.querySelector('li.asked')?.scrollIntoView({ block: 'center' });
    }
  }

  override render() {
    const { corrected } = this;
    if (!corrected) return nothing;
    return html`${this.#closing(corrected)}
      <form @submit=${this.#onSave} @focusin=${this.#onRead}>
        <h2>${say('after.question')}</h2>
        <fieldset class="effort ${this.asked === 'effort' ? 'asked' : ''}">
          <legend>${say('after.effort')}</legend>
          ${effortStrip(this.effort, (effort) => {
            this.effort = effort;
          })}
        </fieldset>
        <fieldset class="pain ${this.asked === 'pain' ? 'asked' : ''}">
          <legend>${say('after.pain')}</legend>
          <p class="meant">${say('after.painMeans')}</p>
          ${this.#painChoice(say('after.no'), false)}${this.#painChoice(say('after.yes'), true)}
          <p class="caution" role="status">${this.pain ? say('after.painStop') : ''}</p>
        </fieldset>
        ${this.#reps(corrected)}
        <label class="note"
          >${say('after.note')}
          <textarea
            rows="2"
            maxlength="4000"
            .value=${this.note}
            @input=${(event: InputEvent) => {
              if (event.target instanceof HTMLTextAreaElement) this.note = event.target.value;
            }}
          ></textarea>
        </label>
        <p class="hint">${say('after.hint')}</p>
        <div class="done">
          <button class="main" type="submit">${say('after.save')}</button>
          <button type="button" @click=${this.#onSkip}>${say('after.skip')}</button>
        </div>
      </form>`;
  }

  /** What was done, large enough to be read where the archer stands; it goes by itself, or at the first press. */
  #closing(record: DrillRecord) {
    if (this.isRead || record.reps.length === 0) return nothing;
    const { fullCount: held } = heldOf(record.reps);
    return html`<div class="closing ${this.flipped ? 'flipped' : ''}" aria-hidden="true" @pointerdown=${this.#onRead}>
      <p class="word">${say('after.closing')}</p>
      <p class="count">${say('after.closingCount', { held, of: Math.max(record.prescribedReps ?? 0, record.reps.length) })}</p>
      <lark-hold-ribbon fills words="" .unit=${0.14} .reps=${record.reps}></lark-hold-ribbon>
    </div>`;
  }

  readonly #onRead = (): void => {
    this.isRead = true;
  };

  #reps(corrected: DrillRecord) {
    if (corrected.reps.length === 0) return html`<p>${say('after.noRep')}</p>`;
    const isOpen = (rep: RepRecord, index: number) =>
      index === this.picked || this.asked === index || !isAsAsked(this.record?.reps[index] ?? rep);
    return html`<section aria-labelledby="reps">
      <h3 id="reps">${say('after.reps')}</h3>
      <p class="sum">${drillWords(corrected)}</p>
      <lark-hold-ribbon
        picks
        .reps=${corrected.reps}
        .picked=${this.picked}
        @lark-pick=${(event: CustomEvent<{ index: number }>) => {
          this.picked = event.detail.index;
        }}
      ></lark-hold-ribbon>
      <ol>
        ${corrected.reps.map((rep, index) => (isOpen(rep, index) ? this.#rep(rep, index, corrected) : nothing))}
      </ol>
    </section>`;
  }

  #painChoice(words: string, pain: boolean) {
    return html`<label>
      <input
        type="radio"
        name="pain"
        .checked=${this.pain === pain}
        @change=${() => {
          this.pain = pain;
        }}
        @click=${() => this.#takeBackPain(pain)}
      />
      <span>${words}</span>
    </label>`;
  }

  /** The question can be left open: a second press takes the answer back. */
  #takeBackPain(pain: boolean): void {
    if (this.pain === pain) this.pain = undefined;
  }

  #rep(rep: RepRecord, index: number, corrected: DrillRecord) {
    // Of a short rep only the reason is asked; its outcome can be changed once its stroke is pressed.
    const isBrief = rep.outcome === 'short' && index !== this.picked && this.asked !== index;
    return html`<li class=${this.asked === index ? 'asked' : ''}>
      <lark-rep-answer
        asksWhy
        .isBrief=${isBrief}
        .rep=${rep}
        .place=${placeOfRep(rep, corrected)}
        @lark-outcome=${(event: CustomEvent<{ outcome: Outcome }>) => this.#correct(index, event.detail.outcome)}
        @lark-settle=${(event: CustomEvent<{ kept: 'clock' | 'seen' }>) => this.#settle(index, event.detail.kept)}
        @lark-why=${(event: CustomEvent<{ why: ShortReason | undefined }>) => this.#explain(index, event.detail.why)}
      ></lark-rep-answer>
    </li>`;
  }

  /** Why a short rep was let down. */
  #explain(index: number, why: ShortReason | undefined): void {
    const { corrected } = this;
    if (corrected) this.corrected = correctWhy(corrected, index, why, corrected.endedAt);
  }

  /** Clock and camera are apart: one of them is right. */
  #settle(index: number, kept: 'clock' | 'seen'): void {
    const { corrected } = this;
    if (corrected) this.corrected = settleSeen(corrected, index, kept, corrected.endedAt);
  }

  #correct(index: number, outcome: Outcome): void {
    const { corrected } = this;
    // The archer may press the one that is chosen already, and what was logged must stay exact.
    if (!corrected || corrected.reps[index]?.outcome === outcome) return;
    const logged = this.record?.reps[index];
    // Back to how it was logged: give back the logged time too.
    this.corrected =
      logged?.outcome === outcome
        ? { ...corrected, reps: corrected.reps.with(index, logged) }
        : correctOutcome(corrected, index, outcome, corrected.endedAt);
  }

  readonly #onKey = (event: KeyboardEvent): void => {
    if (!isForElement(event, this, this.keysFrom)) return;
    if (event.defaultPrevented || event.repeat || event.ctrlKey || event.metaKey || event.altKey) return;
    const [target] = event.composedPath();
    // What has the focus keeps its own keys.
    if (target instanceof HTMLElement && target.matches('input, textarea, select, button, a[href], [contenteditable]'))
      return;
    if (this.#hear(event.code)) event.preventDefault();
  };

  /** One press of a pedal or a key, with nothing in focus. Tells whether it meant anything. */
  #hear(code: string): boolean {
    if (!this.corrected) return false;
    const { moreRest, letDownNow, begin } = this.keys;
    const digit = /^(?:Digit|Numpad)(\d)$/.exec(code)?.[1];
    const isAnswer = digit !== undefined || [moreRest, letDownNow, begin].some((codes) => codes.includes(code));
    // A worn pedal bounces, and a bounce must not answer twice.
    if (!isAnswer || !this.#counts(code)) return isAnswer;
    this.isRead = true;
    if (digit !== undefined) this.#type(Number(digit));
    else if (moreRest.includes(code)) this.#choose(1);
    else if (letDownNow.includes(code)) this.#choose(-1);
    else this.#goOn();
    return true;
  }

  #type(digit: number): void {
    const nowMs = performance.now();
    const isTen = digit === 0 && this.#typedOneAtMs !== undefined && nowMs - this.#typedOneAtMs < TEN_MS;
    this.effort = isTen ? 10 : digit;
    this.#aloud.say(spokenEffort(this.effort));
    this.#typedOneAtMs = digit === 1 ? nowMs : undefined;
  }

  #choose(by: 1 | -1): void {
    if (typeof this.asked === 'number') this.#chooseOfRep(this.asked, by);
    else if (this.asked === 'pain') {
      this.pain = by === 1;
      this.#aloud.say(spokenPain(this.pain));
    } else {
      this.effort = this.effort === undefined ? MIDDLE_EFFORT : Math.min(10, Math.max(0, this.effort + by));
      this.#aloud.say(spokenEffort(this.effort));
    }
  }

  /** How an unsure rep ended, or why a short one was: up and down go through the reasons. */
  #chooseOfRep(index: number, by: 1 | -1): void {
    const isUnsure = this.record?.reps[index]?.outcome === 'unsure';
    if (isUnsure) this.#correct(index, by === 1 ? 'held' : 'short');
    else {
      const { why } = this.corrected?.reps[index] ?? {};
      const from = why === undefined ? (by === 1 ? -1 : REASONS.length) : REASONS.indexOf(why);
      this.#explain(index, REASONS[from + by]);
    }
    const rep = this.corrected?.reps[index];
    if (rep)
      this.#aloud.say(rep.outcome === 'short' && rep.why === undefined && !isUnsure ? NO_ANSWER : spokenRep(rep));
  }

  #goOn(): void {
    const from = typeof this.asked === 'number' ? this.asked + 1 : 0;
    const doubtful = this.record?.reps.findIndex((rep, index) => index >= from && this.#isDoubtful(rep)) ?? -1;
    if (this.asked === 'effort') this.asked = 'pain';
    else if (doubtful >= 0) this.asked = doubtful;
    else {
      this.#save();
      return;
    }
    const about = typeof this.asked === 'number' ? this.record?.reps[this.asked] : this.asked;
    if (about !== undefined) this.#aloud.say(spokenQuestion(about));
  }

  /** A pedal is asked about it: how it ended, and by ear also why it was short. */
  #isDoubtful({ outcome, why }: RepRecord): boolean {
    return outcome === 'unsure' || (this.#asksAloud && outcome === 'short' && why === undefined);
  }

  readonly #onSave = (event: SubmitEvent): void => {
    event.preventDefault();
    this.#save();
  };

  #save(): void {
    const note = this.note.trim();
    this.#aloud.say({ kind: 'answer', words: phrases.saved });
    this.#done({
      ...(this.effort === undefined ? {} : { effort: this.effort }),
      ...(this.pain === undefined ? {} : { pain: this.pain }),
      ...(note === '' ? {} : { note }),
      reps: this.corrected?.reps ?? [],
    });
  }

  /** Skip leaves the questions out; a corrected rep stays so. */
  readonly #onSkip = (): void => {
    this.#done({ reps: this.corrected?.reps ?? [] });
  };

  #done(detail: AfterDrill): void {
    this.dispatchEvent(new CustomEvent<AfterDrill>('lark-after-done', { detail, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-after': LarkAfter;
  }
  interface HTMLElementEventMap {
    'lark-after-done': CustomEvent<AfterDrill>;
  }
}
