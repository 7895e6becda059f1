import { type CuePlayer, phrases } from '@larkhold/cues';
import {
  layOut,
  type RepRecord,
  type SeenEvent,
  type Session,
  type SessionSnapshot,
  type SessionView,
  type Timeline,
} from '@larkhold/engine';
import { say } from '@larkhold/words';
import { type DrillAction, isDrawn, isUnderWay, type Stand } from './action-of-key.ts';
import { ArmedCues } from './armed-cues.ts';
import { callsOf } from './calls-of.ts';
import type { DrillInput, DrillListener } from './drill-input.ts';
import { DrillNotices, type NoticeAbout } from './drill-notices.ts';
import { eventsOf } from './events-of.ts';
import { LookAgain } from './look-again.ts';
import { lookOf } from './look-of.ts';
import { looksOtherwise, nextLookMs } from './next-look.ts';
import { openSession } from './open-session.ts';
import { PastStands } from './past-stands.ts';
import { pressSound } from './press-sound.ts';
import { createPressGuard } from './press-source.ts';
import type { RunnerSettings } from './runner-settings.ts';
import { ScreenAwake } from './screen-awake.ts';
import { StopQuestion } from './stop-question.ts';
import { type Loss, TimeWatch } from './time-watch.ts';
import { type WarmUpWalk, walkWarmUp } from './warm-up-walk.ts';
import { nextWhy } from './why-asked.ts';

/** How long the last sound may take after the end. */
const LAST_SOUND_MS = 4_000;
/** How often a hold is reported again, so that little of it is unknown if the device dies. */
const RENEW_MS = 2_000;

/** Walks one session on a clock, keeps its cues armed, and says what happened. */
export class DrillController {
  readonly #input: DrillInput;
  readonly #listener: DrillListener;
  readonly #timeline: Timeline;
  readonly #session: Session;
  readonly #cues: CuePlayer;
  readonly #reps: RepRecord[] = [];
  readonly #counts: (action: string, atMs: number) => boolean;
  readonly #callAt: (view: SessionView) => string | undefined;
  #view: SessionView;
  readonly #armed: ArmedCues;
  readonly #looks: LookAgain;
  readonly #stop = new StopQuestion();
  #silentAtMs: number | undefined;
  readonly #notices = new DrillNotices();
  #hasBegun = false;
  #toldAtMs = Number.NEGATIVE_INFINITY;
  readonly #stands = new PastStands();
  #seenMs: number | undefined;
  readonly #watch = new TimeWatch();
  #shown: SessionView | undefined;
  #cuesShown = 0;
  readonly #screen: ScreenAwake;
  #isUnheard = false;
  #soundLevel: number;
  readonly #warmUp: WarmUpWalk;
  /** Questions are asked where words are heard, and not at the lowest amount of speech. */
  readonly #asksAloud: boolean;

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
    this.#callAt = callsOf(this.#timeline);
    this.#session = openSession(input, this.#timeline);
    this.#looks = new LookAgain(environment, () => this.#walk());
    this.#screen = new ScreenAwake(environment, (message) => this.#note('screen', message));
    this.#warmUp = walkWarmUp(settings.saysWarmUp && !resumeFrom ? (prescription.warmUp ?? []) : []);
    this.#session.onRep((rep) => this.#reps.push(rep));
    this.#view = this.#session.view();
    this.#cues = environment.createCues({ level: settings.soundLevel, voice: settings.voice, quiet: settings.quiet });
    this.#asksAloud = settings.voice !== 'tones' && settings.spoken !== 'least';
    this.#armed = new ArmedCues(this.#cues, this.#timeline, this.#asksAloud);
    this.#cues.onTrouble(() => this.#tellSound());
  }

  /** Where the drill is. */
  get view(): SessionView {
    return this.#view;
  }

  /** What is wrong, in plain words; empty when all is well. */
  get notice(): string {
    return this.#notices.text;
  }

  /** How many cues are over, or have just begun. */
  get cuesPassed(): number {
    const { offsetMs } = this.#view;
    return this.#view.state === 'waiting' ? 0 : this.#timeline.cues.filter(({ atMs }) => atMs <= offsetMs).length;
  }

  /** The coach's call or the archer's own step that was said last in this hold; empty between, undefined in a block that has none. */
  get call(): string | undefined {
    return this.#callAt(this.#view);
  }

  /** Whether cues go unheard now. */
  get isUnheard(): boolean {
    return this.#isUnheard;
  }

  /** Whether the archer has been asked if the drill should stop. */
  get isAskingToStop(): boolean {
    return this.#stop.untilMs !== undefined;
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
    const isFresh = (resumeFrom?.state ?? 'waiting') === 'waiting';
    this.#session.send({ type: isFresh ? 'begin' : 'gap' }, environment.nowMs());
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
    else if (action === 'stop' && isUnderWay(this.#view)) this.#askToStop(atMs);
    else if (isUnderWay(this.#view)) this.#steer(action, atMs);
  }

  #pressInWarmUp(action: DrillAction): void {
    if (action === 'begin') this.#goOnWarmUp();
    if (action !== 'stop') return;
    this.#hasBegun = true;
    this.#session.send({ type: 'stop' }, this.#input.environment.nowMs());
    this.#follow();
  }

  /**
   * Where the drill was at a moment.
   * @param atMs milliseconds on the environment's clock; a recent one, for only the last few changes are kept
   * @returns state and step
   */
  standAt(atMs: number): Stand {
    return this.#stands.at(atMs) ?? this.#view;
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

  /** Asks whether the drill should stop; asked again it stops, but not while the bow is drawn. */
  askToStop(): void {
    const nowMs = this.#input.environment.nowMs();
    if (!isUnderWay(this.#view) || !this.#counts('stop', nowMs)) return;
    if (isDrawn(this.#session.view())) this.#stop.close();
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
    this.#stop.close();
    this.#cues.say('goesOn', phrases.resumed);
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
    this.#looks.close();
    this.#screen.rest();
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
    else for (const type of eventsOf(action, this.#standAsOf(atMs))) this.#session.send({ type }, atMs);
    const said = answer?.said ?? pressSound(action, before, this.#session.view());
    this.#advance(this.#input.environment.nowMs());
    this.#follow();
    // After the cues are armed again, or the press would be silenced with those before.
    if (said) this.#cues.say(said.kind, said.words);
    if (answer) this.#tellChange(this.#session.snapshot());
  }

  /** Where the drill was at a moment that it has been walked to. */
  #standAsOf(atMs: number): Stand {
    return atMs < (this.#seenMs ?? atMs) ? this.standAt(atMs) : this.#session.view();
  }

  #askToStop(atMs: number): void {
    if (this.#stop.press(atMs, this.#input.environment.nowMs())) {
      this.#session.send({ type: 'stop' }, atMs);
      this.#follow();
      this.#cues.say('done', phrases.stopped);
      return;
    }
    this.#cues.say('stopAsked', phrases.stopAsked);
    this.#listener.onShow();
    this.#askLook();
  }

  /** Requests the next look in place of the one requested before; none where nothing can change by itself. */
  #askLook(): void {
    const nowMs = this.#input.environment.nowMs();
    const view = this.#view;
    const nextCue = this.#timeline.cues.find((cue) => cue.atMs > view.offsetMs);
    const nextCueMs = nextCue && nextCue.atMs - view.offsetMs;
    const waits = [this.#stop.untilMs, this.#silentAtMs, this.#screen.darkAtMs].flatMap((atMs) =>
      atMs === undefined ? [] : [Math.max(0, atMs - nowMs)],
    );
    const lookMs = nextLookMs(view, { nextCueMs, isSilent: this.#isSilent }) ?? Number.POSITIVE_INFINITY;
    this.#looks.after(Math.min(lookMs, ...waits));
  }

  #walk(): void {
    const nowMs = this.#input.environment.nowMs();
    if (this.#stop.untilMs !== undefined && nowMs >= this.#stop.untilMs) {
      this.#stop.close();
      this.#listener.onShow();
    }
    if (this.#silentAtMs !== undefined && nowMs >= this.#silentAtMs) {
      this.#cues.disarm();
      return;
    }
    if (isUnderWay(this.#view)) {
      this.#advance(nowMs);
      this.#follow();
    } else this.#askLook();
  }

  /** Walks on. Time in which the page slept, hung or could be neither seen nor heard is a gap: nothing of it may be credited. */
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
    this.#seenMs = nowMs;
    return this.#watch.look(lookOf(this.#input.environment, nowMs, !this.#isSilent), this.#view);
  }

  get #isSilent(): boolean {
    return this.#isUnheard || this.#soundLevel === 0;
  }

  /** After anything that may have moved the session: arms, shows, tells. */
  #follow(): void {
    const before = this.#view;
    const view = this.#session.view();
    this.#view = view;
    this.#armed.follow(view);
    if (view.pausedBy === 'gap' && before.pausedBy !== 'gap' && !this.#notices.has('gap'))
      this.#note('gap', say('drill.timeLost'));
    if (view.pausedBy === 'gap' && before.pausedBy !== 'gap')
      this.#cues.say('paused', `${phrases.timeLost}. ${phrases.paused}`);
    if (view.state === 'running') this.#note('gap', undefined);
    this.#show(view);
    this.#screen.follow(view);
    for (const rep of this.#reps.splice(0)) {
      this.#listener.onRep(rep, this.#session.record(), this.#session.snapshot());
    }
    const isNewStep = before.step?.startMs !== view.step?.startMs || before.step?.kind !== view.step?.kind;
    if (isNewStep || before.state !== view.state) {
      const snapshot = this.#session.snapshot();
      const fromMs = snapshot.ledger.sinceMs ?? this.#input.environment.nowMs();
      this.#stands.add(fromMs, view);
      this.#tellChange(snapshot);
    } else if (isDrawn(view) && this.#input.environment.nowMs() - this.#toldAtMs >= RENEW_MS) {
      this.#tellChange(this.#session.snapshot());
    }
    const isOver = view.state === 'done' || view.state === 'stopped';
    if (isOver && this.#silentAtMs === undefined) {
      this.#silentAtMs = this.#input.environment.nowMs() + LAST_SOUND_MS;
      this.#screen.rest();
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

  #tellChange(snapshot: SessionSnapshot): void {
    this.#toldAtMs = this.#input.environment.nowMs();
    this.#listener.onChange(snapshot);
  }

  #tellSound(): void {
    const { trouble } = this.#cues;
    this.#isUnheard = trouble !== undefined && trouble.kind !== 'wordless';
    this.#note('sound', trouble?.message);
  }

  #note(about: NoticeAbout, message: string | undefined): void {
    if (!this.#notices.put(about, message)) return;
    if (message !== undefined) this.#listener.onNotice(message);
    this.#listener.onShow();
  }
}
