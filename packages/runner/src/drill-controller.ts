import type { CuePlayer } from '@larkhold/cues';
import {
  type Cue,
  createSession,
  type DrillRecord,
  GAP_LIMIT_MS,
  layOut,
  type Prescription,
  type RepRecord,
  type Session,
  type SessionEvent,
  type SessionSnapshot,
  type SessionView,
  type Timeline,
} from '@larkhold/engine';
import { say } from '@larkhold/words';
import { type DrillAction, isDrawn, type Stand } from './action-of-key.ts';
import { createPressGuard } from './press-source.ts';
import type { RunnerEnvironment } from './runner-environment.ts';
import type { RunnerSettings } from './runner-settings.ts';

/** How long the question whether to stop is shown. */
export const STOP_QUESTION_MS = 3_000;
/** Cues are not scheduled anew when the origin moved by no more than this. */
const SAME_ORIGIN_MS = 1;
/** How long the last sound may take after the end. */
const LAST_SOUND_MS = 4_000;
/** Looking away for this long, with nothing heard, is no loss. */
const UNNOTICED_MS = 1_000;
/** A rest that nobody notices may go on until this long before the draw. */
const CALL_BACK_MS = 5_000;
/** After this long without a look, presses that wait are handled before the drill walks on. */
const BUSY_MS = 300;
/** How many changes of state or step a late press can look back on. */
const STANDS = 8;
/** How often a hold is told anew, so that little of it is unknown if the device dies. */
const RENEW_MS = 2_000;

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
  #unnoticedSinceMs: number | undefined;
  #isUnheard = false;
  #soundLevel: number;

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
      resumeFrom,
    });
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

  /** Begins, or shows where a kept session stands. Call it in a press, or sound is refused. The session never waits for sound. */
  begin(): void {
    if (this.#hasBegun) return;
    this.#hasBegun = true;
    const { environment, resumeFrom } = this.#input;
    this.#cues.unlock().catch(() => {
      this.#isUnheard = true;
      this.#note('sound', say('drill.soundMissing'));
    });
    this.#seenMs = environment.nowMs();
    const isKept = resumeFrom !== undefined && resumeFrom.state !== 'waiting';
    this.#session.send({ type: isKept ? 'gap' : 'begin' }, environment.nowMs());
    this.#letSleep = environment.keepAwake?.((message) => this.#note('screen', message));
    this.#listener.onBegin(this.#session.record());
    this.#tellSound();
    this.#follow();
    this.#askFrame();
  }

  /**
   * Does what a press asks, as of the moment it happened; what made no sense then is ignored.
   * @param action what was asked
   * @param atMs when, milliseconds on the environment's clock; now where left out
   */
  press(action: DrillAction, atMs = this.#input.environment.nowMs()): void {
    if (!this.#counts(action, atMs)) return;
    if (action === 'begin') this.begin();
    else if (action === 'stop' && this.#isUnderWay()) this.#askToStop(atMs);
    else if (this.#isUnderWay()) this.#steer(action, atMs);
  }

  /**
   * Where the drill stood: what a press meant is decided by that, not by where it stands when a busy page gets to handle it.
   * @param atMs a moment, milliseconds on the environment's clock
   * @returns state and step; of the last few only, so that the moment must be a recent one
   */
  standAt(atMs: number): Stand {
    return this.#stands.findLast(({ fromMs }) => fromMs <= atMs)?.stand ?? this.#stands[0]?.stand ?? this.#view;
  }

  /** Takes the question back. */
  keepGoing(): void {
    this.#stopUntilMs = undefined;
    this.#listener.onShow();
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
    if (this.#frame !== undefined) this.#input.environment.cancelFrame(this.#frame);
    this.#frame = undefined;
    this.#isClosed = true;
    this.#rest();
    this.#cues.close();
  }

  #steer(action: DrillAction, atMs: number): void {
    if (atMs > (this.#seenMs ?? atMs)) this.#advance(atMs);
    for (const type of this.#eventsOf(action, this.#standAsOf(atMs))) this.#session.send({ type }, atMs);
    this.#advance(this.#input.environment.nowMs());
    this.#follow();
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
      return;
    }
    this.#stopUntilMs = this.#input.environment.nowMs() + STOP_QUESTION_MS;
    this.#listener.onShow();
  }

  #askFrame(): void {
    const { environment } = this.#input;
    this.#frame = environment.requestFrame(() => {
      this.#frame = undefined;
      const isBusy = this.#seenMs !== undefined && environment.nowMs() - this.#seenMs > BUSY_MS;
      if (!isBusy || !environment.afterPresses) this.#walk();
      // A let-down that was pressed while the page was busy comes before the end of the hold that it cut short.
      else environment.afterPresses(() => this.#isClosed || this.#walk());
    });
  }

  #walk(): void {
    const nowMs = this.#input.environment.nowMs();
    if (this.#stopUntilMs !== undefined && nowMs > this.#stopUntilMs) this.#stopUntilMs = undefined;
    if (this.#isUnderWay()) {
      this.#advance(nowMs);
      this.#follow();
    }
    if (this.#silentAtMs !== undefined && nowMs >= this.#silentAtMs) this.#cues.disarm();
    else this.#askFrame();
  }

  /** Walks on. A page that stood still in the middle of a long hold passes no deadline, so the time between two looks is watched too. */
  #advance(nowMs: number): void {
    const isLost = this.#seenMs !== undefined && nowMs - this.#seenMs > GAP_LIMIT_MS;
    this.#seenMs = nowMs;
    if (this.#view.state === 'running' && (isLost || this.#isUnnoticed(nowMs))) {
      this.#session.send({ type: 'gap' }, nowMs);
      this.#note('gap', isLost ? say('drill.timeLost') : say('drill.hidden'));
    } else {
      this.#session.advance(nowMs);
    }
  }

  /** Whether the archer can neither see nor hear a step that counts. Nothing of that may be credited. */
  #isUnnoticed(nowMs: number): boolean {
    const isSilent = this.#isUnheard || this.#soundLevel === 0;
    if (!isSilent || (this.#input.environment.isSeen?.() ?? true)) {
      this.#unnoticedSinceMs = undefined;
      return false;
    }
    this.#unnoticedSinceMs ??= nowMs;
    const { step, msLeft } = this.#view;
    const isWait = step?.kind === 'ready' || step?.kind === 'rest' || step?.kind === 'setRest';
    return nowMs - this.#unnoticedSinceMs > UNNOTICED_MS && !(isWait && msLeft > CALL_BACK_MS);
  }

  /** After anything that may have moved the session: arms, shows, tells. */
  #follow(): void {
    const before = this.#view;
    const view = this.#session.view();
    this.#view = view;
    this.#arm(view);
    if (view.pausedBy === 'gap' && before.pausedBy !== 'gap' && !this.#notices.has('gap'))
      this.#note('gap', say('drill.timeLost'));
    if (view.state === 'running') this.#note('gap', undefined);
    this.#listener.onShow();
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
      this.#cues.arm(
        this.#timeline.cues.filter((cue) => cue.atMs >= from),
        originMs,
      );
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

/** Holds and calls both stand in order of time, so that one pass finds the holds with a call in them. */
function blocksWithCalls(steps: Timeline['steps'], calls: readonly Cue[]): ReadonlySet<number> {
  const blocks = new Set<number>();
  let next = 0;
  for (const { kind, block, startMs, durationMs } of steps) {
    while ((calls[next]?.atMs ?? Number.POSITIVE_INFINITY) < startMs) next += 1;
    const atMs = calls[next]?.atMs;
    if (kind === 'hold' && atMs !== undefined && atMs < startMs + durationMs) blocks.add(block);
  }
  return blocks;
}
