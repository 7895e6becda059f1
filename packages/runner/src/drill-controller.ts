import { type CuePlayer, phrases, type SoundCue } from '@larkhold/cues';
import {
  type Cue,
  createSession,
  type DrillRecord,
  layOut,
  type Prescription,
  type RepRecord,
  type SeenEvent,
  type Session,
  type SessionEvent,
  type SessionSnapshot,
  type SessionView,
  type Timeline,
} from '@larkhold/engine';
import { say } from '@larkhold/words';
import { type DrillAction, isDrawn, type Stand } from './action-of-key.ts';
import { blocksWithCalls } from './blocks-with-calls.ts';
import { looksOtherwise, nextLookMs } from './next-look.ts';
import { pressSound, type Said } from './press-sound.ts';
import { createPressGuard } from './press-source.ts';
import type { RunnerEnvironment } from './runner-environment.ts';
import type { RunnerSettings } from './runner-settings.ts';
import { type Loss, TimeWatch } from './time-watch.ts';
import { type WarmUpWalk, walkWarmUp } from './warm-up-walk.ts';
import { nextWhy, whyCue } from './why-asked.ts';

/** How long the question whether to stop is shown. */
export const STOP_QUESTION_MS = 3_000;
/** Cues are not scheduled anew when the origin moved by no more than this. */
const SAME_ORIGIN_MS = 1;
/** How long the last sound may take after the end. */
const LAST_SOUND_MS = 4_000;
/** A look that comes this much too late found the page busy: presses that wait are handled before the drill walks on. */
const BUSY_MS = 300;
/** How many changes of state or step a late press can look back on. */
const STANDS = 8;
/** How often a hold is told anew, so that little of it is unknown if the device dies. */
const RENEW_MS = 2_000;
/** A pause longer than this lets the screen go dark, milliseconds. */
export const AWAKE_IN_PAUSE_MS = 10 * 60_000;

/** What a drill is run from. */
export interface DrillInput {
  prescription: Prescription;
  programId?: string;
  settings: RunnerSettings;
  resumeFrom?: SessionSnapshot;
  environment: RunnerEnvironment;
  /** The program's title; the prescription's where left out. */
  programTitle?: string;
}

/** Who hears of a drill. */
export interface DrillListener {
  /** Something to show has changed: the view, a notice, the question. */
  onShow(): void;
  onBegin(record: DrillRecord): void;
  onRep(rep: RepRecord, record: DrillRecord, snapshot: SessionSnapshot): void;
  /** Another step or state, and every two seconds while the bow is drawn. */
  onChange(snapshot: SessionSnapshot): void;
  onEnd(record: DrillRecord): void;
  onNotice(message: string): void;
}

/** Walks one session on a clock, keeps its cues armed, and says what happened. */
export class DrillController {
  readonly #input: DrillInput;
  readonly #listener: DrillListener;
  readonly #timeline: Timeline;
  readonly #session: Session;
  readonly #cues: CuePlayer;
  readonly #reps: RepRecord[] = [];
  readonly #counts: (action: string, atMs: number) => boolean;
  readonly #calls: readonly Cue[];
  readonly #blocksWithCalls: ReadonlySet<number>;
  #view: SessionView;
  #armedOriginMs: number | undefined;
  #frame: number | undefined;
  #letSleep: (() => void) | undefined;
  #stopUntilMs: number | undefined;
  #silentAtMs: number | undefined;
  #notices = new Map<'gap' | 'sound' | 'screen', string>();
  #hasBegun = false;
  #isClosed = false;
  #toldAtMs = Number.NEGATIVE_INFINITY;
  #stands: { fromMs: number; stand: Stand }[] = [];
  #seenMs: number | undefined;
  readonly #watch = new TimeWatch();
  #shown: SessionView | undefined;
  #cuesShown = 0;
  #pausedAtMs: number | undefined;
  #isUnheard = false;
  #soundLevel: number;
  readonly #warmUp: WarmUpWalk;

  /**
   * @param input what to run
   * @param listener who hears of it
   * @throws RangeError or TypeError when the prescription or the snapshot cannot be run
   */
  constructor(input: DrillInput, listener: DrillListener) {
    const { prescription, settings, environment, resumeFrom } = input;
    this.#input = input;
    this.#soundLevel = settings.soundLevel;
    this.#listener = listener;
    this.#counts = createPressGuard(() => environment.nowMs());
    this.#timeline = layOut(prescription, settings);
    this.#calls = this.#timeline.cues.filter((cue) => cue.kind === 'call');
    this.#blocksWithCalls = blocksWithCalls(this.#timeline.steps, this.#calls);
    this.#session = createSession({
      timeline: this.#timeline,
      program: input.programTitle || prescription.programTitle,
      programId: input.programId || undefined,
      startedAt: resumeFrom?.startedAt ?? environment.wallNow(),
      newId: () => environment.newId(),
      countFromAnchor: settings.countFromAnchor,
      resumeFrom,
    });
    this.#warmUp = walkWarmUp(settings.saysWarmUp && !resumeFrom ? (prescription.warmUp ?? []) : []);
    this.#session.onRep((rep) => this.#reps.push(rep));
    this.#view = this.#session.view();
    this.#cues = environment.createCues({ level: settings.soundLevel, voice: settings.voice, quiet: settings.quiet });
    this.#cues.onTrouble(() => this.#tellSound());
  }

  /** Where the drill stands. */
  get view(): SessionView {
    return this.#view;
  }

  /** What is wrong, in plain words; empty when all is well. */
  get notice(): string {
    return [...this.#notices.values()].join(' ');
  }

  /** How many cues are over, or have just begun. */
  get cuesPassed(): number {
    const { state, offsetMs } = this.#view;
    if (state === 'waiting') return 0;
    return this.#timeline.cues.filter((cue) => cue.atMs <= offsetMs).length;
  }

  /** The coach's call or the archer's own step that was said last in this hold; empty between, undefined in a block that has none. */
  get call(): string | undefined {
    const { step, offsetMs, state } = this.#view;
    if (step === undefined || !this.#blocksWithCalls.has(step.block)) return undefined;
    if (step.kind !== 'hold' || state !== 'running') return '';
    return this.#calls.findLast((cue) => cue.atMs >= step.startMs && cue.atMs <= offsetMs)?.words ?? '';
  }

  /** Whether cues go unheard now. */
  get isUnheard(): boolean {
    return this.#isUnheard;
  }

  /** Whether the archer has been asked if the drill shall stop. */
  get isAskingToStop(): boolean {
    return this.#stopUntilMs !== undefined;
  }

  /** The line of the warm-up to do now; undefined once the drill itself has begun. */
  get warmUpLine(): string | undefined {
    return this.#hasBegun ? undefined : this.#warmUp.line;
  }

  /**
   * Begins, with the first line of the warm-up where the archer wants it said, or shows where a kept session is. Call it in a press, or sound is
   * refused. The session never waits for sound.
   */
  begin(): void {
    if (this.#hasBegun) return;
    this.#unlock();
    if (this.#warmUp.line === undefined) this.#beginSession();
    else this.#tellWarmUp(phrases.warmUp);
  }

  #unlock(): void {
    this.#cues.unlock().catch(() => {
      this.#isUnheard = true;
      this.#note('sound', say('drill.soundMissing'));
    });
  }

  /** One line after the other, then the drill. */
  #goOnWarmUp(): void {
    this.#warmUp.next();
    if (this.#warmUp.line === undefined) this.#beginSession();
    else this.#tellWarmUp();
  }

  #tellWarmUp(before = ''): void {
    if (before !== '') this.#cues.say('ready', before);
    this.#cues.say('call', this.#warmUp.said);
    this.#listener.onShow();
  }

  #beginSession(): void {
    this.#hasBegun = true;
    const { environment, resumeFrom } = this.#input;
    this.#lookForLoss(environment.nowMs());
    const isKept = resumeFrom !== undefined && resumeFrom.state !== 'waiting';
    this.#session.send({ type: isKept ? 'gap' : 'begin' }, environment.nowMs());
    this.#listener.onBegin(this.#session.record());
    this.#tellSound();
    this.#follow();
  }

  /**
   * Does what a press asks, as of the moment it happened; what made no sense then is ignored.
   * @param action what was asked
   * @param atMs when, milliseconds on the environment's clock; now where left out
   */
  press(action: DrillAction, atMs = this.#input.environment.nowMs()): void {
    if (!this.#counts(action, atMs)) return;
    if (this.warmUpLine !== undefined) this.#pressInWarmUp(action);
    else if (action === 'begin') this.begin();
    else if (action === 'stop' && this.#isUnderWay()) this.#askToStop(atMs);
    else if (this.#isUnderWay()) this.#steer(action, atMs);
  }

  #pressInWarmUp(action: DrillAction): void {
    if (action === 'begin') this.#goOnWarmUp();
    if (action !== 'stop') return;
    this.#hasBegun = true;
    this.#session.send({ type: 'stop' }, this.#input.environment.nowMs());
    this.#follow();
  }

  /**
   * Where the drill stood: what a press meant is decided by that, not by where it stands when a busy page gets to handle it.
   * @param atMs a moment, milliseconds on the environment's clock
   * @returns state and step; of the last few only, so that the moment must be a recent one
   */
  standAt(atMs: number): Stand {
    return this.#stands.findLast(({ fromMs }) => fromMs <= atMs)?.stand ?? this.#stands[0]?.stand ?? this.#view;
  }

  /**
   * Takes in what a witness saw; it may be some time ago.
   * @param seen the bow at full draw, or let down
   * @param atMs when, the environment's clock, milliseconds
   * @param form of a let-down: what had moved in the hold
   */
  observe(seen: SeenEvent['seen'], atMs: number, form?: SeenEvent['form']): void {
    if (this.#view.state !== 'running') return;
    const nowMs = this.#input.environment.nowMs();
    this.#advance(nowMs);
    this.#session.send({ type: 'observe', seen, atMs, form }, nowMs);
    this.#follow();
    // What was seen of a rep that is over changes the record, not the view.
    if (seen === 'letDown') this.#listener.onChange(this.#session.snapshot());
  }

  /** Asks whether the drill shall stop; asked again it stops, but not while the bow is drawn. */
  askToStop(): void {
    const nowMs = this.#input.environment.nowMs();
    if (!this.#isUnderWay() || !this.#counts('stop', nowMs)) return;
    if (isDrawn(this.#session.view())) this.#stopUntilMs = undefined;
    this.#askToStop(nowMs);
  }

  /**
   * One soft word at full draw, beside the cues; nothing outside of a hold.
   * @param words as the spoken words have them, in English
   */
  remind(words: string): void {
    const { state, step } = this.#view;
    if (state === 'running' && step?.kind === 'hold') this.#cues.say('call', words);
  }

  /** Takes the question back. */
  keepGoing(): void {
    this.#stopUntilMs = undefined;
    this.#say({ kind: 'goesOn', words: phrases.resumed });
    this.#listener.onShow();
    this.#askLook();
  }

  /**
   * Changes how cues sound, also during a drill.
   * @param settings the settings as they are now
   */
  setSound(settings: Pick<RunnerSettings, 'soundLevel' | 'voice' | 'quiet'>): void {
    this.#soundLevel = settings.soundLevel;
    this.#cues.set({ level: settings.soundLevel, voice: settings.voice, quiet: settings.quiet });
  }

  /** Lets go of sound, screen and clock. The record stays as it is. */
  close(): void {
    const { environment } = this.#input;
    if (this.#frame !== undefined) environment.cancelFrame(this.#frame);
    this.#frame = undefined;
    this.#isClosed = true;
    this.#rest();
    // At the end the last word is only just beginning.
    const lastMs = this.#silentAtMs === undefined ? 0 : this.#silentAtMs - environment.nowMs();
    if (lastMs > 0) environment.requestFrame(() => this.#cues.close(), lastMs);
    else this.#cues.close();
  }

  #steer(action: DrillAction, atMs: number): void {
    if (atMs > (this.#seenMs ?? atMs)) this.#advance(atMs);
    const before = this.#session.view();
    const answer = action === 'letDownNow' && this.#asksAloud ? nextWhy(before) : undefined;
    if (answer) this.#session.send({ type: 'why', why: answer.why }, atMs);
    else for (const type of this.#eventsOf(action, this.#standAsOf(atMs))) this.#session.send({ type }, atMs);
    const said = answer?.said ?? pressSound(action, before, this.#session.view());
    this.#advance(this.#input.environment.nowMs());
    this.#follow();
    if (said) this.#say(said);
    if (answer) this.#tellChange(this.#session.snapshot());
  }

  /** After the cues are armed anew, or the press would be silenced with those before. */
  #say({ kind, words }: Said): void {
    this.#cues.say(kind, words);
  }

  /** Questions are asked where words are heard, and not where as little as can be is said. */
  get #asksAloud(): boolean {
    const { voice, spoken } = this.#input.settings;
    return voice !== 'tones' && spoken !== 'least';
  }

  /** Where the drill stood at a moment that it has been walked to. */
  #standAsOf(atMs: number): Stand {
    return atMs < (this.#seenMs ?? atMs) ? this.standAt(atMs) : this.#session.view();
  }

  #eventsOf(action: DrillAction, view: Stand): SessionEvent['type'][] {
    if (action !== 'pauseOrResume') return action === 'begin' || action === 'stop' ? [] : [action];
    if (view.state === 'paused') return ['resume'];
    // Nobody should stand at full draw while time stands still.
    return isDrawn(view) ? ['letDownNow', 'pause'] : ['pause'];
  }

  #isUnderWay(): boolean {
    return this.#view.state === 'running' || this.#view.state === 'paused';
  }

  #askToStop(atMs: number): void {
    const untilMs = this.#stopUntilMs;
    // A press from before the question was shown is no answer to it.
    if (untilMs !== undefined && atMs >= untilMs - STOP_QUESTION_MS && atMs <= untilMs) {
      this.#stopUntilMs = undefined;
      this.#session.send({ type: 'stop' }, atMs);
      this.#follow();
      this.#say({ kind: 'done', words: phrases.stopped });
      return;
    }
    this.#stopUntilMs = this.#input.environment.nowMs() + STOP_QUESTION_MS;
    this.#say({ kind: 'stopAsked', words: phrases.stopAsked });
    this.#listener.onShow();
    this.#askLook();
  }

  /** Asks for the next look in place of the one that was asked for; for none where nothing can change by itself. */
  #askLook(): void {
    const { environment } = this.#input;
    if (this.#frame !== undefined) environment.cancelFrame(this.#frame);
    this.#frame = undefined;
    const nowMs = environment.nowMs();
    const afterMs = this.#isClosed ? Number.POSITIVE_INFINITY : this.#nextLookMs(nowMs);
    if (afterMs === Number.POSITIVE_INFINITY) return;
    this.#frame = environment.requestFrame(() => {
      this.#frame = undefined;
      const isBusy = environment.nowMs() - nowMs - afterMs > BUSY_MS;
      if (!isBusy || !environment.afterPresses) this.#walk();
      // A let-down that was pressed while the page was busy comes before the end of the hold that it cut short.
      else environment.afterPresses(() => this.#isClosed || this.#walk());
    }, afterMs);
  }

  #nextLookMs(nowMs: number): number {
    const view = this.#view;
    const nextCue = this.#timeline.cues.find((cue) => cue.atMs > view.offsetMs);
    const nextCueMs = nextCue && nextCue.atMs - view.offsetMs;
    const darkAtMs =
      this.#letSleep && this.#pausedAtMs !== undefined ? this.#pausedAtMs + AWAKE_IN_PAUSE_MS : undefined;
    const waits = [this.#stopUntilMs, this.#silentAtMs, darkAtMs].flatMap((atMs) =>
      atMs === undefined ? [] : [Math.max(0, atMs - nowMs)],
    );
    return Math.min(nextLookMs(view, { nextCueMs, isSilent: this.#isSilent }) ?? Number.POSITIVE_INFINITY, ...waits);
  }

  #walk(): void {
    const nowMs = this.#input.environment.nowMs();
    if (this.#stopUntilMs !== undefined && nowMs >= this.#stopUntilMs) {
      this.#stopUntilMs = undefined;
      this.#listener.onShow();
    }
    if (this.#silentAtMs !== undefined && nowMs >= this.#silentAtMs) {
      this.#cues.disarm();
      return;
    }
    if (this.#isUnderWay()) {
      this.#advance(nowMs);
      this.#follow();
    } else this.#askLook();
  }

  /** Walks on. What slept, stood still or could be neither seen nor heard is a gap: nothing of it may be credited. */
  #advance(nowMs: number): void {
    const loss = this.#lookForLoss(nowMs);
    if (loss === undefined) {
      this.#session.advance(nowMs);
      return;
    }
    this.#session.send({ type: 'gap' }, nowMs);
    this.#note('gap', loss === 'lost' ? say('drill.timeLost') : say('drill.hidden'));
  }

  #lookForLoss(nowMs: number): Loss | undefined {
    const { environment } = this.#input;
    this.#seenMs = nowMs;
    const wallNowMs = environment.wallMs?.();
    // As it stood at a press that is handled late.
    const wallMs = wallNowMs === undefined ? undefined : wallNowMs - (environment.nowMs() - nowMs);
    const isSeen = environment.isSeen?.() ?? true;
    return this.#watch.look({ nowMs, wallMs, isSeen, isHeard: !this.#isSilent }, this.#view);
  }

  get #isSilent(): boolean {
    return this.#isUnheard || this.#soundLevel === 0;
  }

  /** After anything that may have moved the session: arms, shows, tells. */
  #follow(): void {
    const before = this.#view;
    const view = this.#session.view();
    this.#view = view;
    this.#arm(view);
    if (view.pausedBy === 'gap' && before.pausedBy !== 'gap' && !this.#notices.has('gap'))
      this.#note('gap', say('drill.timeLost'));
    if (view.pausedBy === 'gap' && before.pausedBy !== 'gap')
      this.#say({ kind: 'paused', words: `${phrases.timeLost}. ${phrases.paused}` });
    if (view.state === 'running') this.#note('gap', undefined);
    this.#show(view);
    this.#stayAwake(view);
    for (const rep of this.#reps.splice(0)) {
      this.#listener.onRep(rep, this.#session.record(), this.#session.snapshot());
    }
    const isNewStep = before.step?.startMs !== view.step?.startMs || before.step?.kind !== view.step?.kind;
    if (isNewStep || before.state !== view.state) {
      const snapshot = this.#session.snapshot();
      const fromMs = snapshot.ledger.sinceMs ?? this.#input.environment.nowMs();
      this.#stands = [...this.#stands.slice(1 - STANDS), { fromMs, stand: view }];
      this.#tellChange(snapshot);
    } else if (isDrawn(view) && this.#input.environment.nowMs() - this.#toldAtMs >= RENEW_MS) {
      this.#tellChange(this.#session.snapshot());
    }
    const isOver = view.state === 'done' || view.state === 'stopped';
    if (isOver && this.#silentAtMs === undefined) {
      this.#silentAtMs = this.#input.environment.nowMs() + LAST_SOUND_MS;
      this.#rest();
      this.#listener.onEnd(this.#session.record());
    }
    this.#askLook();
  }

  /** Has it drawn where it looks otherwise than when it was last drawn. */
  #show(view: SessionView): void {
    const { cuesPassed } = this;
    if (this.#shown && this.#cuesShown === cuesPassed && !looksOtherwise(this.#shown, view)) return;
    this.#shown = view;
    this.#cuesShown = cuesPassed;
    this.#listener.onShow();
  }

  /** The screen stays on while the drill runs, and for a while in a pause. */
  #stayAwake({ state }: SessionView): void {
    const { environment } = this.#input;
    if (state === 'running') {
      this.#pausedAtMs = undefined;
      this.#letSleep ??= environment.keepAwake?.((message) => this.#note('screen', message));
    } else if (state === 'paused') {
      this.#pausedAtMs ??= environment.nowMs();
      if (environment.nowMs() - this.#pausedAtMs >= AWAKE_IN_PAUSE_MS) this.#rest();
    }
  }

  #tellChange(snapshot: SessionSnapshot): void {
    this.#toldAtMs = this.#input.environment.nowMs();
    this.#listener.onChange(snapshot);
  }

  #arm(view: SessionView): void {
    const { originMs } = view;
    if (view.state === 'running' && originMs !== undefined) {
      if (this.#armedOriginMs !== undefined && Math.abs(originMs - this.#armedOriginMs) <= SAME_ORIGIN_MS) return;
      this.#armedOriginMs = originMs;
      // A part of a millisecond is the binary fractions', not a cue that is over.
      const from = view.offsetMs - SAME_ORIGIN_MS;
      const cues: SoundCue[] = this.#timeline.cues.filter((cue) => cue.atMs >= from);
      const question = this.#asksAloud ? whyCue(this.#timeline, view) : undefined;
      this.#cues.arm(question === undefined ? cues : [...cues, question], originMs);
    } else if (this.#armedOriginMs !== undefined) {
      this.#armedOriginMs = undefined;
      // At the end the last word is only just beginning.
      if (view.state !== 'done') this.#cues.disarm();
    }
  }

  #rest(): void {
    this.#letSleep?.();
    this.#letSleep = undefined;
  }

  #tellSound(): void {
    const { trouble } = this.#cues;
    this.#isUnheard = trouble !== undefined && trouble.kind !== 'wordless';
    this.#note('sound', trouble?.message);
  }

  #note(about: 'gap' | 'sound' | 'screen', message: string | undefined): void {
    if (this.#notices.get(about) === message) return;
    if (message === undefined) this.#notices.delete(about);
    else this.#notices.set(about, message);
    if (message !== undefined) this.#listener.onNotice(message);
    this.#listener.onShow();
  }
}
