import { type AudioOutput, howlerOutput } from './audio-output.ts';
import { createClockMap, readClocks } from './clock-map.ts';
import { type CueSettings, changeCueSettings, defaultCueSettings } from './cue-settings.ts';
import { cueSounds, QUIET_WORD_RATIO } from './cue-sound.ts';
import type { CueTrouble } from './cue-trouble.ts';
import { type ArmedCue, armCues, MISPLACED_MS, planCues } from './plan-cues.ts';
import type { SoundCue, SoundKind } from './press-sound.ts';
import { canSpeak, speakCall, stopSpeaking } from './speak-call.ts';
import { getWords, loadSpritePack, ownPackUrl, type WordSounds } from './sprite-pack.ts';
import { createStartedCues } from './started-cues.ts';
import { type Wake, workerWake } from './wake.ts';
import { createWatchdog } from './watchdog.ts';

/** Makes cues heard on time. */
export interface CuePlayer {
  /** Lets sound begin. Call it in the press that begins a drill. Gives false when sound is refused. */
  unlock(): Promise<boolean>;
  /**
   * Plays each cue at page clock `originMs + cue.atMs`. Replaces what was armed; past cues are dropped.
   *
   * @param cues offsets in milliseconds
   * @param originMs where offset 0 is on the page clock (`performance.now()`), milliseconds
   */
  arm(cues: readonly SoundCue[], originMs: number): void;
  /** Nothing more sounds, at once. */
  disarm(): void;
  /**
   * Sounds one cue now, beside what is armed.
   *
   * @param kind its tone, and its phrase where it brings no words
   * @param words what is said, in English as cues bring them
   */
  say(kind: SoundKind, words?: string): void;
  /** Changes how cues sound, also those already armed. */
  set(settings: Partial<CueSettings>): void;
  /** Why cues may go unheard, or undefined while all is well. */
  readonly trouble: CueTrouble | undefined;
  /** @returns a function that ends the listening */
  onTrouble(listen: (trouble: CueTrouble | undefined) => void): () => void;
  /** Silences and lets go of everything. */
  close(): void;
}

/** What a player needs from outside; a test brings its own. */
export interface CueEnvironment {
  /** The page clock, milliseconds. */
  nowMs: () => number;
  output: AudioOutput;
  wake: (onWake: () => void) => Wake;
  /** Where a file of the spoken words is found, by its name. Another language is another folder. */
  packUrl: (name: string) => URL | string;
}

/** Often enough that a step the sound loses is followed before the next cue. */
const WAKE_MS = 50;
/** Between wake-ups while the clocks may just have come apart: the browser stamps them about as often. */
const DOUBT_MS = 10;
/** With nothing to be heard for this long, as in a pause, the audio clock is stopped, milliseconds. */
export const DORMANT_AFTER_MS = 10_000;
/** How often a stopped sound is asked to go on, milliseconds. */
const RESUME_EVERY_MS = 400;
/** Between asking for a sound and its first sample, in seconds, so that its beginning is not cut. */
const SAFE_START_SECONDS = 0.005;

/**
 * A player of cues: they are put on the audio clock seconds ahead, so that a busy or hidden page is still on time.
 *
 * @param settings how cues sound; what is left out is as in `defaultCueSettings`
 * @param environment clock, output and wake-ups, for tests
 * @returns the player, silent until something is armed
 * @throws RangeError when the level is not between 0 and 1
 */
export function createCuePlayer(
  settings: Partial<CueSettings> = {},
  environment: Partial<CueEnvironment> = {},
): CuePlayer {
  const { nowMs, output, packUrl }: Omit<CueEnvironment, 'wake'> = {
    nowMs: () => performance.now(),
    output: howlerOutput(),
    packUrl: ownPackUrl,
    ...environment,
  };
  let current = changeCueSettings(defaultCueSettings, settings);
  let waiting: ArmedCue[] = [];
  let words: WordSounds | undefined;
  let wordsAsked = false;
  let resumeAskedMs = Number.NEGATIVE_INFINITY;
  let watched: AudioContext | undefined;
  let dormantTimer: ReturnType<typeof setTimeout> | undefined;
  /** `asleep`: we stopped the audio clock; `waking`: it was asked to go on and has not answered. */
  let rest: 'none' | 'asleep' | 'waking' = 'none';
  const map = createClockMap();
  const started = createStartedCues();
  const watchdog = createWatchdog();
  const wake = (environment.wake ?? workerWake)(advance);
  let everyMs = 0;
  /** By due time: a call that is corrected on the audio clock is still spoken once. */
  const speechTimers = new Map<number, ReturnType<typeof setTimeout>>();

  const onVisible = (): void => {
    if (globalThis.document?.visibilityState === 'visible' && isArmed()) void output.resume().then(advance);
  };
  globalThis.document?.addEventListener('visibilitychange', onVisible);

  const isArmed = (): boolean => waiting.length > 0 || started.count() > 0;

  /** One wake-up: read both clocks, correct what drifted, start what comes near, say what is wrong. */
  function advance(): void {
    // A clock that we stopped ourselves is no trouble.
    if (rest !== 'none') return;
    const pageMs = nowMs();
    const audio = output.context();
    watch(audio);
    const state = audio?.state ?? 'none';
    watchdog.look({ pageMs, audioSeconds: audio?.currentTime ?? 0, state, isArmed: isArmed() });
    if (watchdog.isStill) {
      // Sources left on a clock that stands still would all be late when it goes on.
      waiting = [...started.takeBackFuture(audio?.currentTime ?? 0), ...waiting].sort((a, b) => a.dueMs - b.dueMs);
      // And the rest of one that was sounding would be said whenever it goes on.
      started.stopAll(audio?.currentTime ?? 0);
      map.clear();
      if (isArmed() && pageMs - resumeAskedMs >= RESUME_EVERY_MS) {
        resumeAskedMs = pageMs;
        void output.resume();
      }
    } else if (audio) {
      map.add(readClocks(audio, pageMs));
      if (everyMs > 0) wakeEvery(map.isInDoubt ? DOUBT_MS : WAKE_MS);
      waiting.push(...started.takeBackMisplaced(audio.currentTime, map.toAudio, MISPLACED_MS / 1000));
      waiting.sort((a, b) => a.dueMs - b.dueMs);
    }
    const plan = planCues(waiting, pageMs);
    if (audio && !watchdog.isStill) {
      waiting = plan.later;
      for (const armed of plan.start) start(audio, armed);
      started.forgetEnded(audio.currentTime);
    } else {
      waiting = [...plan.start, ...plan.later];
    }
    if (!isArmed()) wakeEvery(0);
  }

  function wakeEvery(ms: number): void {
    if (ms !== everyMs) wake.every(ms);
    everyMs = ms;
  }

  function start(audio: AudioContext, armed: ArmedCue): void {
    const destination = output.destination();
    const dueSeconds = map.toAudio(armed.dueMs);
    if (!destination || dueSeconds === undefined || started.hasBegun(armed)) return;
    if (current.voice !== 'tones') askForWords(audio);
    const { cue } = armed;
    const sounds = cueSounds(cue, current, words, audio.sampleRate);
    clearTimeout(speechTimers.get(armed.dueMs));
    const isUnsaid = cue.kind === 'call' && current.voice !== 'tones' && !getWords(words, cue);
    if (cue.words && isUnsaid && canSpeak(current.language)) {
      const text = cue.words;
      const timer = setTimeout(
        () => speakCall(text, current.language, current.quiet ? current.level * QUIET_WORD_RATIO : current.level),
        Math.max(0, armed.dueMs - nowMs()),
      );
      speechTimers.set(armed.dueMs, timer);
    }
    started.start(audio, destination, armed, sounds, dueSeconds, audio.currentTime + SAFE_START_SECONDS);
  }

  function askForWords(audio: AudioContext): void {
    if (wordsAsked) return;
    wordsAsked = true;
    loadSpritePack(packUrl, async (bytes) => {
      const buffer = await audio.decodeAudioData(bytes);
      return { sampleRate: buffer.sampleRate, samples: buffer.getChannelData(0) };
    }).then(
      (loaded) => {
        words = loaded;
        restart();
      },
      () => {
        wordsAsked = false;
        watchdog.setWordless(true);
      },
    );
  }

  /** Starts again what has not sounded yet, after a change of voice. */
  function restart(): void {
    const audio = output.context();
    if (!audio) return;
    waiting.push(...started.takeBackFuture(audio.currentTime));
    if (isArmed()) advance();
  }

  function watch(audio: AudioContext | undefined): void {
    if (audio === watched) return;
    watched?.removeEventListener('statechange', advance);
    watched = audio;
    watched?.addEventListener('statechange', advance);
    map.clear();
  }

  function sleepLater(): void {
    clearTimeout(dormantTimer);
    dormantTimer = setTimeout(() => {
      if (isArmed() || output.context()?.state !== 'running') return;
      rest = 'asleep';
      map.clear();
      void output.suspend();
    }, DORMANT_AFTER_MS);
  }

  async function wakeUp(): Promise<boolean> {
    clearTimeout(dormantTimer);
    if (rest === 'asleep') rest = 'waking';
    const isHeard = await output.resume();
    if (rest === 'waking') rest = 'none';
    return isHeard;
  }

  function silence(): void {
    waiting = [];
    for (const timer of speechTimers.values()) clearTimeout(timer);
    if (speechTimers.size > 0) stopSpeaking();
    speechTimers.clear();
  }

  return {
    async unlock() {
      output.setLevel(current.level);
      const isHeard = await wakeUp();
      const audio = output.context();
      if (audio && current.voice !== 'tones') askForWords(audio);
      watchdog.unlocked(isHeard, audio !== undefined);
      if (isArmed()) advance();
      return isHeard;
    },
    arm(cues, originMs) {
      silence();
      const audio = output.context();
      started.takeBackFuture(audio?.currentTime ?? 0);
      waiting = armCues(cues, originMs, nowMs());
      if (waiting.length === 0) return;
      output.setLevel(current.level);
      wakeEvery(WAKE_MS);
      clearTimeout(dormantTimer);
      if (rest === 'asleep') void wakeUp().then(advance);
      else advance();
    },
    disarm() {
      silence();
      started.stopAll(output.context()?.currentTime ?? 0);
      wakeEvery(0);
      sleepLater();
    },
    say(kind, words) {
      output.setLevel(current.level);
      const sayNow = (): void => {
        const audio = output.context();
        if (audio?.state !== 'running') return;
        map.add(readClocks(audio, nowMs()));
        start(audio, { cue: { atMs: 0, kind, ...(words === undefined ? {} : { words }) }, dueMs: nowMs() });
      };
      if (output.context()?.state === 'running') sayNow();
      else void wakeUp().then(sayNow);
    },
    set(changes) {
      const before = current;
      current = changeCueSettings(before, changes);
      if (current.level !== before.level && output.context()) output.setLevel(current.level);
      if (current.voice === 'tones') {
        watchdog.setWordless(false);
      }
      if (current.voice !== before.voice || current.quiet !== before.quiet) restart();
    },
    get trouble() {
      return watchdog.trouble;
    },
    onTrouble: watchdog.onTrouble,
    close() {
      clearTimeout(dormantTimer);
      silence();
      started.stopAll(output.context()?.currentTime ?? 0);
      wake.close();
      watched?.removeEventListener('statechange', advance);
      globalThis.document?.removeEventListener('visibilitychange', onVisible);
    },
  };
}
