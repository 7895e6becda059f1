import {
  layOut,
  type Prescription,
  type RepRecord,
  type SeenEvent,
  type SessionSnapshot,
  type SessionView,
  type Step,
} from '@larkhold/engine';
import type { RibbonRep } from '@larkhold/ui/ribbon';
import { say } from '@larkhold/words';
import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { actionOfKey, type DrillAction, isDrawn, type Stand } from './action-of-key.ts';
import { browserEnvironment } from './browser-environment.ts';
import { DrillController } from './drill-controller.ts';
import { drillEvent } from './drill-events.ts';
import { drillRibbon } from './drill-ribbon.ts';
import { drillStyles } from './drill-styles.ts';
import { buttonStyles, lookStyles } from './glance-look.ts';
import './lark-glance.ts';
import { becomeFocusable, isForElement, type KeysFrom, takeFocus } from './keys-from.ts';
import { digitLegibility, leastFontPx } from './legibility.ts';
import { createPressGuard, type PressSource } from './press-source.ts';
import type { RunnerEnvironment } from './runner-environment.ts';
import { defaultRunnerSettings, type RunnerSettings } from './runner-settings.ts';
import { blockLines, waitingView } from './waiting-view.ts';

/**
 * Runs one drill: shows it, sounds it, hears keys and buttons, and tells what happened.
 *
 * @prop prescription today's numbers
 * @prop programTitle the program's title as the record keeps it
 * @prop programId the program file's id, where it has one
 * @prop settings sound, display and keys
 * @prop keysFrom whose keys are heard: its own while it has the focus (Begin takes it), or `page` for every key
 * @prop resumeFrom a kept session of the same prescription; `begin()` then shows where it is and waits for Resume
 * @prop sources what is pressed beside keys and screen: gamepads, a headset, claps
 * @prop environment clock, sound and frames; the browser's where left out
 * @slot sight - a camera's own room, below the display or beside it
 * @slot - beside the display, small: what the archer keeps in mind
 * @event lark-begin begun; detail `{ record }`
 * @event lark-rep a rep ended; detail `{ rep, record, snapshot }`
 * @event lark-change another step or state, and every two seconds while the bow is drawn; detail `{ snapshot }`
 * @event lark-end done or stopped; detail `{ record }`
 * @event lark-notice something the archer has to know; detail `{ message }`
 * @cssprop --lark-ground background
 * @cssprop --lark-ink text and the bow
 * @cssprop --lark-dim text that matters less
 * @cssprop --lark-faint lines
 * @cssprop --lark-accent what matters now
 * @cssprop --lark-on-accent text on the accent
 * @cssprop --lark-raised buttons
 * @cssprop --lark-font family of the text
 * @csspart word the word of the phase
 * @csspart seconds the number
 * @csspart call the coach's or the archer's own line
 */
@customElement('lark-drill')
export class LarkDrill extends LitElement {
  static override styles = [lookStyles, buttonStyles, drillStyles];

  @property({ attribute: false }) prescription: Prescription | undefined;
  @property({ attribute: 'program-title' }) programTitle = '';
  @property({ attribute: 'program-id' }) programId: string | undefined;
  @property({ attribute: false }) settings: RunnerSettings = defaultRunnerSettings;
  @property({ attribute: false }) resumeFrom: SessionSnapshot | undefined;
  @property({ attribute: false }) sources: readonly PressSource[] = [];
  @property({ attribute: 'keys-from' }) keysFrom: KeysFrom = 'focus';
  @property({ attribute: false }) environment: RunnerEnvironment | undefined;

  #drill: DrillController | undefined;
  #ownEnvironment: RunnerEnvironment | undefined;
  #endListening: (() => void)[] = [];
  readonly #unheard = new Map<PressSource, string>();
  /** The reps that ended. */
  #done: readonly RepRecord[] = [];
  #holds: { prescription: Prescription; steps: readonly Step[] } | undefined;
  #drawn:
    | { key: string; done: readonly RepRecord[]; prescription: Prescription; reps: readonly RibbonRep[] }
    | undefined;
  #tooSmall = '';
  /** What the last measuring was of. */
  #measured = '';
  readonly #counts = createPressGuard(() => this.#environment.nowMs());

  override connectedCallback(): void {
    super.connectedCallback();
    becomeFocusable(this, this.keysFrom);
    window.addEventListener('keydown', this.#onKey);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('keydown', this.#onKey);
    this.#hush();
    this.#drill?.close();
    this.#drill = undefined;
  }

  /**
   * Begins the drill. Call it in the press that begins it, so that sound is let through; it never waits for sound.
   * @throws TypeError without a prescription; RangeError or TypeError when the prescription or snapshot cannot be run
   */
  begin(): void {
    if (this.#drill) return;
    if (!this.prescription) throw new TypeError('prescription is not set; expected one before begin()');
    this.#drill = new DrillController(
      {
        prescription: this.prescription,
        programTitle: this.programTitle,
        programId: this.programId,
        settings: this.settings,
        resumeFrom: this.resumeFrom,
        environment: this.#environment,
      },
      {
        onShow: () => this.requestUpdate(),
        onBegin: (record) => {
          this.#done = record.reps;
          this.dispatchEvent(drillEvent('lark-begin', { record }));
        },
        onRep: (rep, record, snapshot) => {
          this.#done = record.reps;
          this.dispatchEvent(drillEvent('lark-rep', { rep, record, snapshot }));
        },
        onChange: (snapshot) => this.dispatchEvent(drillEvent('lark-change', { snapshot })),
        onEnd: (record) => {
          this.#hush();
          this.dispatchEvent(drillEvent('lark-end', { record }));
        },
        onNotice: (message) => this.dispatchEvent(drillEvent('lark-notice', { message })),
      },
    );
    takeFocus(this, this.keysFrom);
    if (this.settings.fullScreen) this.requestFullscreen?.().catch(() => undefined);
    this.#drill.begin();
    // Heard already since the element was put into the page; a microphone is not opened twice.
    if (this.#endListening.length === 0) this.#listen();
  }

  /**
   * Takes in what a witness (a camera) saw. What makes no sense now is ignored, and the drill never waits for it.
   * @param seen the bow at full draw, or let down
   * @param atMs when, milliseconds of `performance.now()`
   * @param form of a let-down: what had moved in the hold, where that could be judged
   */
  observe(seen: SeenEvent['seen'], atMs: number, form?: SeenEvent['form']): void {
    this.#drill?.observe(seen, atMs, form);
  }

  /** Asks whether the drill should stop, as Stop does, for a way out that is easily taken by mistake: while the bow is drawn no asking is an answer. */
  askToStop(): void {
    this.#drill?.askToStop();
  }

  /**
   * Says one soft word while the archer holds; nothing at any other time.
   * @param words one of the spoken words, in English as cues bring them
   */
  remind(words: string): void {
    this.#drill?.remind(words);
  }

  /** Where the drill is; undefined before it begins. */
  get view(): SessionView | undefined {
    return this.#drill?.view;
  }

  get #environment(): RunnerEnvironment {
    if (this.environment) return this.environment;
    this.#ownEnvironment ??= browserEnvironment();
    return this.#ownEnvironment;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('settings')) this.setAttribute('theme', this.settings.theme);
    if (changed.has('settings')) this.#drill?.setSound(this.settings);
    if (changed.has('sources')) this.#listen();
  }

  protected override updated(): void {
    if (this.view?.step?.kind === 'ready' || !this.#drill) void this.#measure();
  }

  /** Whether the number can be read from where the archer stands: told before it matters. */
  async #measure(): Promise<void> {
    const { viewing, pixelMm } = this.settings;
    const glance = this.renderRoot.querySelector('lark-glance');
    if (!viewing || !glance) return;
    await glance.updateComplete;
    const { digitPx } = glance;
    // The warning takes room itself: measured again under it, two answers could take turns for ever.
    const { clientWidth, clientHeight } = this;
    const measured = JSON.stringify([clientWidth, clientHeight, viewing, pixelMm, Boolean(this.#drill)]);
    if (!digitPx || measured === this.#measured) return;
    this.#measured = measured;
    const warning = digitLegibility(viewing, digitPx, pixelMm).warning ?? '';
    if (warning === this.#tooSmall) return;
    this.#tooSmall = warning;
    this.requestUpdate();
  }

  /** Hears the sources from now on, in place of those before. */
  #listen(): void {
    this.#hush();
    if (!this.isConnected || this.view?.state === 'done' || this.view?.state === 'stopped') return;
    this.#endListening = this.sources.map((source) =>
      source.listen(
        (code, stampMs) => void this.#hear(code, stampMs),
        (message) => this.#tellUnheard(source, message),
      ),
    );
  }

  #hush(): void {
    for (const end of this.#endListening.splice(0)) end();
    this.#unheard.clear();
  }

  /** A microphone that is refused, a gamepad that is pulled out: told where the archer looks. */
  #tellUnheard(source: PressSource, message: string | undefined): void {
    if (this.#unheard.get(source) === message) return;
    if (message === undefined) this.#unheard.delete(source);
    else this.#unheard.set(source, message);
    if (message !== undefined) this.dispatchEvent(drillEvent('lark-notice', { message }));
    this.requestUpdate();
  }

  readonly #onKey = (event: KeyboardEvent): void => {
    if (!isForElement(event, this, this.keysFrom)) return;
    if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return;
    const [target] = event.composedPath();
    if (target instanceof HTMLElement && target.matches('input, textarea, select, [contenteditable]')) return;
    const view = this.#standAt(this.#instantOf(event.timeStamp));
    const isPress = event.code === 'Space' || event.code === 'Enter';
    // A focused button keeps its own keys, but while the bow is drawn the space bar lets down whatever has the focus.
    const isSafety = event.code === 'Space' && view !== undefined && isDrawn(view);
    if (isPress && !isSafety && target instanceof HTMLElement && target.matches('button, a[href], summary')) return;
    if (event.repeat ? this.#actionOf(event.code, this.#environment.nowMs()) : this.#hear(event.code, event.timeStamp))
      event.preventDefault();
  };

  /** When a press happened, by its stamp. */
  #instantOf(stampMs: number | undefined): number {
    const environment = this.#environment;
    return (stampMs === undefined ? undefined : environment.pressedAtMs?.(stampMs)) ?? environment.nowMs();
  }

  /** Where the drill was at a moment; undefined before it begins. */
  #standAt(atMs: number): Stand | undefined {
    return this.#drill?.standAt(atMs);
  }

  #actionOf(code: string, atMs: number): DrillAction | undefined {
    const action = actionOfKey(code, this.settings.keys, this.#standAt(atMs));
    // A warm-up goes on by whatever begins a drill.
    return action === 'begin' && !this.prescription ? undefined : action;
  }

  /** One press of a key, a pedal, a clap. Tells whether it meant anything when it happened. */
  #hear(code: string, stampMs: number | undefined): boolean {
    const atMs = this.#instantOf(stampMs);
    const action = this.#actionOf(code, atMs);
    if (!action) return false;
    // A worn pedal bounces: what it sends again at once is the same press, though it would mean another thing by now.
    if (this.#counts(code, atMs)) this.#do(action, atMs);
    return true;
  }

  #do(action: DrillAction, atMs: number): void {
    if (action === 'begin' && !this.#drill) this.begin();
    else this.#drill?.press(action, atMs);
  }

  #press(action: DrillAction) {
    return (event: MouseEvent) => {
      // A finger leaves the focus on the button, and the next press of a pedal would press it again.
      if (event.detail > 0 && event.currentTarget instanceof HTMLElement) event.currentTarget.blur();
      this.#do(action, this.#instantOf(event.timeStamp));
    };
  }

  /** While the bow is drawn, the whole display is one button. */
  readonly #onTouch = (event: PointerEvent): void => {
    const atMs = this.#instantOf(event.timeStamp);
    const stand = this.#standAt(atMs);
    if (stand && isDrawn(stand)) this.#do('letDownNow', atMs);
  };

  override render() {
    const drill = this.#drill;
    const view = drill?.view ?? (this.prescription && waitingView(this.prescription));
    if (!view) return nothing;
    const block = this.prescription?.blocks.find((one) => one.block === view.step?.block);
    const isBefore = view.state === 'waiting';
    return html`<lark-glance
        exportparts="word, seconds, call"
        .view=${view}
        .blockTitle=${block?.title ?? (this.programTitle || (this.prescription?.programTitle ?? ''))}
        .leastPx=${this.settings.viewing ? Math.ceil(leastFontPx(this.settings.viewing, this.settings.pixelMm)) : 0}
        .reps=${this.#ribbon(view)}
        .flipped=${this.settings.flipped}
        .hand=${this.settings.hand}
        .layout=${this.settings.layout ?? 'bow'}
        .call=${drill?.call}
        .theme=${this.settings.theme}
        .notice=${[drill?.notice, ...this.#unheard.values(), isBefore ? this.#tooSmall : ''].filter(Boolean).join(' ')}
        .pulse=${drill && this.#isSeenNotHeard(drill) ? drill.cuesPassed : 0}
        @pointerdown=${this.#onTouch}
      ></lark-glance>
      <slot name="sight"></slot>
      <slot></slot>
      ${drill ? (drill.warmUpLine === undefined ? nothing : this.#warmUp(drill.warmUpLine)) : this.#waiting()} ${drill?.isAskingToStop ? this.#question(drill) : nothing}
      ${drill ? this.#buttons(view) : nothing}`;
  }

  /** The same ribbon until a rep ends or a hold begins: it is drawn at every frame. */
  #ribbon(view: SessionView): readonly RibbonRep[] {
    const { prescription } = this;
    if (!prescription) return [];
    if (this.#holds?.prescription !== prescription) {
      const steps = layOut(prescription).steps.filter(({ kind }) => kind === 'hold');
      this.#holds = { prescription, steps };
    }
    const key = `${this.#done.length} ${view.step?.kind} ${view.state}`;
    const kept = this.#drawn;
    if (kept?.key === key && kept.done === this.#done && kept.prescription === prescription) return kept.reps;
    const reps = drillRibbon(this.#holds.steps, this.#done, view);
    this.#drawn = { key, done: this.#done, prescription, reps };
    return reps;
  }

  /** Whether each cue brightens the edge of the display: where a house sleeps, or nothing can be heard. */
  #isSeenNotHeard(drill: DrillController): boolean {
    return this.settings.quiet || this.settings.soundLevel === 0 || drill.isUnheard;
  }

  #waiting() {
    const { prescription } = this;
    if (!prescription) return nothing;
    const warmUp = prescription.warmUp ?? [];
    return html`<div class="waiting">
      <ul>
        ${blockLines(prescription).map((line) => html`<li>${line}</li>`)}
        ${warmUp.length > 0 ? html`<li>${say('drill.warmUp', { lines: warmUp.join('. ') })}</li>` : nothing}
      </ul>
      <button class="main" @click=${this.#press('begin')}>${say('drill.begin')}</button>
    </div>`;
  }

  #warmUp(line: string) {
    return html`<div class="waiting warm-up">
      <p role="status">${say('drill.warmUpLine', { line })}</p>
      <div class="row">
        <button class="main" @click=${this.#press('begin')}>${say('drill.goOn')}</button>
        <button @click=${this.#press('stop')}>${say('drill.stop')}</button>
      </div>
    </div>`;
  }

  #question(drill: DrillController) {
    return html`<div class="question" role="alert">
      <p>${say('drill.stopAsked')}</p>
      <button @click=${() => drill.keepGoing()}>${say('drill.keepGoing')}</button>
    </div>`;
  }

  #buttons(view: SessionView) {
    if (view.state !== 'running' && view.state !== 'paused') return nothing;
    const isPaused = view.state === 'paused';
    const kind = view.step?.kind;
    const isWaiting = !isPaused && (kind === 'ready' || kind === 'rest' || kind === 'setRest');
    return html`<div class="buttons" role="group" aria-label=${say('drill.group')}>
      <button class=${isDrawn(view) ? 'main' : ''} ?disabled=${!isDrawn(view)} @click=${this.#press('letDownNow')}>
        ${say('drill.letDownNow')}
      </button>
      <button class=${isPaused ? 'main' : ''} @click=${this.#press('pauseOrResume')}>
        ${isPaused ? say('drill.resume') : say('drill.pause')}
      </button>
      <button ?disabled=${isPaused || kind === 'letDown'} @click=${this.#press('skipRep')}>${say('drill.skip')}</button>
      <button ?disabled=${!isWaiting} @click=${this.#press('moreRest')}>${say('drill.moreRest')}</button>
      <button ?disabled=${!isWaiting} @click=${this.#press('lessRest')}>${say('drill.lessRest')}</button>
      <button @click=${this.#press('stop')}>${say('drill.stop')}</button>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-drill': LarkDrill;
  }
}
