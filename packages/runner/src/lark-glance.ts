import type { SessionView } from '@larkhold/engine';
import { digitsOf, nextWords, phaseWord, placeWords, presentWords, say, timeLeftWords } from '@larkhold/words';
import '@larkhold/ui/ribbon';
import type { RibbonRep } from '@larkhold/ui/ribbon';
import { html, LitElement, nothing, type PropertyValues, svg } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { guard } from 'lit/directives/guard.js';
import { BOW_BOX, bowPaths, type DrawHand } from './bow-paths.ts';
import { drawAmount, stepDone } from './draw-amount.ts';
import { emWidth, twoLineEmWidth } from './em-width.ts';
import { type DigitPlace, digitPlace, LARGEST_DIGITS } from './glance-digits.ts';
import { glanceLayouts } from './glance-layouts.ts';
import { lookStyles } from './glance-look.ts';
import { glanceStyles } from './glance-styles.ts';
import { NARROWEST_LETTERS, narrowedRatio } from './narrowed-letters.ts';
import type { RunnerTheme } from './runner-settings.ts';

/** How far a bow with a straight string is from the middle of the drawing; with no number beside it, it is moved there. */
const CENTRE_X = 325;

/** How long the edge is bright at a cue. Counted seconds are the closest cues: once a second, far from three flashes (WCAG 2.2, 2.3.1). */
const PULSE_MS = 600;

/**
 * A drill at a glance, to be read from across a room: a drawn bow, a word, a number. It shows what it is given and does nothing else.
 *
 * @prop view where the drill is
 * @prop blockTitle title of the block under way
 * @prop leastPx font size that words need to be read where the archer stands, CSS pixels; they get it where the screen has the room
 * @prop reps the drill as a ribbon: done, under way, to come; none for no ribbon
 * @prop flipped turns everything over, to be read in a mirror
 * @prop hand the hand that draws
 * @prop theme colours
 * @prop call words of the coach or the archer that belong to this moment; empty keeps their place, undefined gives it away
 * @prop notice plain words about trouble, or empty
 * @prop layout what has the room: the bow with the number in it, or the number first, for small screens
 * @prop pulse brightens the edge for a moment each time it grows; 0 for never
 * @csspart word the phase word
 * @csspart seconds the large number
 * @csspart call the coach's or the archer's own words
 * @cssprop --lark-ground background
 * @cssprop --lark-ink text and the bow
 * @cssprop --lark-dim text that matters less
 * @cssprop --lark-faint lines
 * @cssprop --lark-accent what matters now
 * @cssprop --lark-on-accent text on the accent
 * @cssprop --lark-raised buttons
 * @cssprop --lark-font family of the text
 */
@customElement('lark-glance')
export class LarkGlance extends LitElement {
  static override styles = [lookStyles, glanceStyles, glanceLayouts];

  @property({ attribute: false }) view: SessionView | undefined;
  @property({ attribute: 'block-title' }) blockTitle = '';
  @property({ type: Number, attribute: 'least-px' }) leastPx = 0;
  @property({ attribute: false }) reps: readonly RibbonRep[] = [];
  @property({ type: Boolean, reflect: true }) flipped = false;
  @property({ reflect: true }) hand: DrawHand = 'right';
  @property({ reflect: true }) theme: RunnerTheme = 'system';
  @property() call: string | undefined;
  @property() notice = '';
  @property({ type: Number }) pulse = 0;
  @property({ reflect: true }) layout: 'bow' | 'numbers' = 'bow';
  @state() private isStill = false;

  /** Font size of the number in a hold as it is on this screen, CSS pixels; undefined before it is drawn. */
  get digitPx(): number | undefined {
    const plain = this.renderRoot.querySelector('.digits');
    // On a small screen the number is alone, over the drawing.
    if (plain?.checkVisibility()) return Number.parseFloat(getComputedStyle(plain).fontSize);
    const drawing = this.renderRoot.querySelector('svg')?.getBoundingClientRect();
    if (!drawing?.width || !drawing.height) return undefined;
    const scale = Math.min(drawing.width / BOW_BOX.width, drawing.height / BOW_BOX.height);
    return scale * LARGEST_DIGITS;
  }

  /** Whether the last let-down ended at set-up. */
  #isFromSetUp = false;
  #motion: MediaQueryList | undefined;
  readonly #onMotion = () => {
    this.isStill = this.#motion?.matches ?? false;
  };

  /** Enlarged text and a long notice may be more than fits: what can be scrolled must be reached by the keyboard. */
  readonly #room = new ResizeObserver(() => {
    this.#narrow();
    this.#giveStops();
  });

  #giveStops(): void {
    for (const element of [this, this.renderRoot.querySelector('.words')]) {
      if (!(element instanceof HTMLElement)) continue;
      if (element.scrollHeight > element.clientHeight + 1) element.tabIndex = 0;
      else element.removeAttribute('tabindex');
    }
  }

  /** State and notice when the room was last looked at: they change what there is to show, and no size tells of it. */
  #roomOf = '';

  #watchedWords: Element | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.#motion = window.matchMedia('(prefers-reduced-motion: reduce)');
    this.#motion.addEventListener('change', this.#onMotion);
    this.#onMotion();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#motion?.removeEventListener('change', this.#onMotion);
    this.#room.disconnect();
    this.#watchedWords = undefined;
  }

  protected override willUpdate(): void {
    const { step } = this.view ?? {};
    if (step?.kind === 'letDown') this.#isFromSetUp = step.to === 'set-up';
    if (step?.kind === 'hold' || step?.kind === 'ready') this.#isFromSetUp = false;
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (changed.has('leastPx')) this.style.setProperty('--least', `${this.leastPx}px`);
    if ((this.#isOther && this.#fit()) || changed.has('leastPx') || changed.has('layout')) this.#narrow();
    this.#isOther = false;
    const words = this.renderRoot.querySelector('.words');
    if (words && words !== this.#watchedWords) {
      this.#watchedWords = words;
      for (const element of [this, words]) this.#room.observe(element);
    }
    const shown = `${this.view?.state} ${this.view?.step?.kind} ${this.notice}`;
    if (shown !== this.#roomOf) {
      this.#roomOf = shown;
      this.#giveStops();
    }
    const before = changed.get('pulse');
    if (typeof before === 'number' && this.pulse > before && this.pulse > 0) this.#brighten();
  }

  /** What the words and the number were made from when they were last drawn. */
  #madeFrom: readonly unknown[] = [];
  /** Whether words or number have been drawn again since they were last measured. */
  #isOther = false;

  /** All that the words are made from: of the pictures of a bow in movement most change none of it. */
  #wordsFrom({ state: now, step, next, progress }: SessionView, nowMs: number | undefined): unknown[] {
    const { set, sets, rep, reps, repsDone, msLeft } = progress;
    const place = [set, sets, rep, reps, repsDone, Math.ceil(msLeft / 1000)];
    return [now, step, next, ...place, nowMs, this.call, this.notice, this.reps, presentWords()];
  }

  /** What each line said when it was last measured. */
  readonly #fitted = new Map<string, string>();
  /** How wide each line is, font sizes. */
  readonly #widths = new Map<string, number>();

  /**
   * Tells the style sheet how wide each line is, so that it is as large as fits. An inline style in the template would be refused by a content policy.
   * Tells whether a line has other words.
   */
  #fit(): boolean {
    let isOther = false;
    for (const line of ['digits', 'word', 'count', 'what'] as const) {
      const element = this.renderRoot.querySelector<HTMLElement>(`.${line}`);
      // Any digit is as wide as another: a number that counts down keeps its size.
      const words = element?.textContent?.replaceAll(/\d/g, '8') ?? '';
      if (!element || words === '' || this.#fitted.get(line) === words) continue;
      this.#fitted.set(line, words);
      isOther = true;
      const { fontFamily: family } = getComputedStyle(element);
      const look = { family, weight: line === 'what' ? 400 : 700 } as const;
      const widthEm = emWidth(words, look);
      this.#widths.set(line, widthEm);
      this.style.setProperty(`--${line}-em`, widthEm.toFixed(3));
      // What can't be parted is narrowed.
      const twoEm = words.includes(' ') ? twoLineEmWidth(words, look) : widthEm * NARROWEST_LETTERS;
      if (line === 'what') this.style.setProperty('--two-em', twoEm.toFixed(3));
    }
    return isOther;
  }

  /** A word that the archer could not read at the size that fits is larger, and its letters are set narrower. */
  #narrow(): void {
    for (const line of ['word', 'what'] as const) {
      const element = this.renderRoot.querySelector<HTMLElement>(`.${line}`);
      const widthEm = this.#widths.get(line);
      if (!element || widthEm === undefined) continue;
      const fontPx = Number.parseFloat(getComputedStyle(element).fontSize);
      const isParted =
        line === 'what' &&
        element.textContent?.trim().includes(' ') &&
        widthEm * fontPx * NARROWEST_LETTERS > element.clientWidth + 1;
      const ratio = isParted ? 1 : narrowedRatio(element.clientWidth, { widthEm, fontPx });
      this.style.setProperty(`--${line}-narrow`, ratio.toFixed(3));
    }
  }

  /** A frame of light, never the whole screen. Without motion it is there, dimmer, and then gone; it does not fade. */
  #brighten(): void {
    const edge = this.renderRoot.querySelector('.edge');
    for (const running of edge?.getAnimations() ?? []) running.cancel();
    edge?.animate(
      this.isStill
        ? [{ opacity: 0.6 }, { opacity: 0.6 }]
        : [{ opacity: 1 }, { opacity: 1, offset: 0.3 }, { opacity: 0 }],
      { duration: PULSE_MS },
    );
  }

  override render() {
    const { view } = this;
    if (!view) return nothing;
    const kind = view.state === 'running' ? (view.step?.kind ?? 'ready') : view.state;
    const isOver = view.state === 'done' || view.state === 'stopped';
    const seconds = isOver || !view.step ? '' : digitsOf(view.msLeft);
    const nowMs = this.#ribbonMs(view);
    const from = this.#wordsFrom(view, nowMs);
    const made = [...from, seconds, kind];
    if (made.some((one, at) => one !== this.#madeFrom[at])) this.#isOther = true;
    this.#madeFrom = made;
    return html`<div class="edge" aria-hidden="true"></div><div class="face ${kind}">
      <p class="title">${this.blockTitle}</p>
      <div class="bow">
        ${this.#bow(view, seconds)}
        <p class="digits" aria-hidden="true">${seconds}</p>
        <span class="unseen" role="timer">${seconds}</span>
      </div>
      <div class="words">${guard(from, () => this.#words(view, nowMs))}</div>
    </div>`;
  }

  #words(view: SessionView, nowMs: number | undefined) {
    const isOver = view.state === 'done' || view.state === 'stopped';
    return html`<p class="word" part="word" aria-live="polite"><span class="narrowed">${phaseWord(view)}</span></p>
        ${isOver || view.state === 'waiting' ? nothing : this.#count(view)}
        ${view.step?.hand === 'opposite' ? html`<p class="hand">${say('drill.otherHand')}</p>` : nothing}
        ${this.call === undefined || isOver ? nothing : html`<p class="call" part="call">${this.call}</p>`}
        ${this.#nextLine(view)}
        ${this.#ribbon(nowMs)}
        <div class="small">
          <p class="place">${placeWords(view)}</p>
          <p class="left">${timeLeftWords(view)}</p>
        </div>
        <div class="unseen instead">
          <p>${placeWords(view)}</p>
          <p>${timeLeftWords(view)}</p>
        </div>
        ${this.notice ? html`<p class="notice" role="status">${this.notice}</p>` : nothing}`;
  }

  #bow(view: SessionView, seconds: string) {
    const amount = this.#amount(view);
    const hand = view.step?.hand === 'opposite' ? otherHand(this.hand) : this.hand;
    const shape = bowPaths(amount, hand, this.#leftRatio(view));
    const kind = view.step?.kind;
    const isPaused = view.state === 'paused' && seconds !== '';
    const digits = digitPlace(
      isPaused ? '00' : seconds,
      shape,
      hand,
      kind === 'draw' || kind === 'hold' || kind === 'letDown',
    );
    const text = isPaused ? belowBars(digits) : digits;
    return html`<svg viewBox="0 0 ${BOW_BOX.width} ${BOW_BOX.height}" aria-hidden="true">
      ${svg`<g transform="translate(${seconds ? 0 : hand === 'right' ? CENTRE_X : -CENTRE_X} 0)">
        <path class="string" d=${shape.string}></path>
        <path class="lit" d=${shape.lit}></path>
        <path class="limbs" d=${shape.limbs}></path>
        <path class="grip" d=${shape.grip}></path>
        <circle class="fingers" cx=${shape.fingers.x} cy=${shape.fingers.y} r="15"></circle></g>
        <text class="seconds" part="seconds" text-anchor="middle" font-size=${LARGEST_DIGITS} transform=${placed(text)}>
          ${seconds}
        </text>
        ${isPaused ? bars(digits) : nothing}`}
    </svg>`;
  }

  /** How much of the string is lit: all of it through a draw, and the time left of a hold or a rest. */
  #leftRatio(view: SessionView): number {
    const kind = view.step?.kind;
    if (kind === 'draw') return 1;
    if (kind !== 'hold' && kind !== 'rest' && kind !== 'setRest') return 0;
    const left = 1 - stepDone(view);
    // Without motion it goes by whole seconds.
    return this.isStill ? Math.min(1, (Math.ceil(view.msLeft / 1000) * 1000) / Math.max(1, view.stepMs)) : left;
  }

  #amount(view: SessionView): number {
    if (view.state === 'waiting' || view.state === 'done' || view.state === 'stopped') return 0;
    return drawAmount(view, { isStill: this.isStill, fromSetUp: this.#isFromSetUp });
  }

  /** Which rep of how many, in the fewest signs; in a rest it is the one to come. */
  #count({ step, next, progress }: SessionView) {
    const coming = step?.kind === 'rest' || step?.kind === 'setRest' ? next : undefined;
    const words = `${(coming?.rep ?? progress.rep) + 1}/${progress.reps}`;
    return html`<p class="count" aria-hidden="true">${words}</p>`;
  }

  /** The lead small, what it is as large as the screen allows: that is what is read from where the archer stands. */
  #nextLine(view: SessionView) {
    const words = this.#next(view);
    const cut = words.indexOf(': ') + 1;
    const what = words.slice(cut).trim();
    return html`<p class="next">${cut > 0 ? html`<span class="lead">${words.slice(0, cut)}</span> ` : nothing}<span class="what"><span class="narrowed">${what}</span></span></p>`;
  }

  /** What comes next; in a rest before a plain draw, how long it will be held. */
  #next(view: SessionView): string {
    const words = nextWords(view);
    const ms = this.reps[view.progress.repsDone]?.prescribedMs;
    const isRest = view.step?.kind === 'rest' || view.step?.kind === 'setRest';
    return isRest && ms !== undefined && words === say('phase.nextDraw') ? say('phase.nextHold', { ms }) : words;
  }

  /** By the quarter of a second: the number tells the time, the ribbon only that it grows. */
  #ribbonMs({ state: now, step, stepMs, msLeft }: SessionView): number | undefined {
    return step?.kind === 'hold' && now !== 'stopped' ? Math.floor((stepMs - msLeft) / 250) * 250 : undefined;
  }

  #ribbon(nowMs: number | undefined) {
    if (this.reps.length === 0) return nothing;
    return html`<lark-hold-ribbon fills words="" .unit=${0.14} .reps=${this.reps} .nowMs=${nowMs}></lark-hold-ribbon>`;
  }
}

/** A number that grows with the bow is scaled: another font size in each picture would have its signs laid out again sixty times a second. */
function placed({ x, y, fontSize }: DigitPlace): string {
  return `translate(${round(x)} ${round(y)}) scale(${round(fontSize / LARGEST_DIGITS)})`;
}

/** What nobody could see a difference of is left out. */
function round(value: number): number {
  return Math.round(value * 1000) / 1000;
}

/** Two bars in place of the number: a pause is known by its shape, and no rest looks like it. */
function bars({ x, fontSize }: DigitPlace) {
  const [width, height, apart] = [0.16 * fontSize, 0.6 * fontSize, 0.2 * fontSize];
  const y = BOW_BOX.height / 2 - 0.75 * height;
  return svg`<g class="bars">${[x - apart / 2 - width, x + apart / 2].map(
    (left) => svg`<rect x=${left} y=${y} width=${width} height=${height} rx=${width / 5}></rect>`,
  )}</g>`;
}

/** Where the time left is while paused, smaller. */
function belowBars({ x, fontSize }: DigitPlace): DigitPlace {
  return { x, y: BOW_BOX.height / 2 + 0.54 * fontSize, fontSize: 0.42 * fontSize };
}

function otherHand(hand: DrawHand): DrawHand {
  return hand === 'right' ? 'left' : 'right';
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-glance': LarkGlance;
  }
}
