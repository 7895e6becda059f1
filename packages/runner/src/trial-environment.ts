import type { CuePlayer, CueSettings, CueTrouble, SoundCue, SoundKind } from '@larkhold/cues';
import type { PrescribedBlock, Prescription } from '@larkhold/engine';
import type { RunnerEnvironment } from './runner-environment.ts';

/** A clock moved by hand, frames that run when told to, and cues that only remember. */
export interface TrialEnvironment extends RunnerEnvironment {
  /** Moves the clock in frames of 50 ms, running what waits for a frame. */
  pass(spanMs: number): void;
  /** Moves the clock without a frame: a machine that sleeps. */
  sleep(spanMs: number): void;
  /** Moves the wall clock alone: a machine that sleeps and stops the page clock, or a clock that is set. */
  setWall(byMs: number): void;
  /** What was armed and silenced, in order: the origin, or 'disarm'. */
  armed: ({ originMs: number; cues: readonly SoundCue[] } | 'disarm')[];
  settings: Partial<CueSettings>[];
  /** What was heard so far, in order: armed cues that came due, and what was said at once; times on the page clock, milliseconds. */
  heard: { atMs: number; kind: SoundKind; words: string }[];
  trouble(trouble: CueTrouble | undefined): void;
  setSeen(isSeen: boolean): void;
}

const FRAME_MS = 50;

/**
 * An environment for tests and demonstrations.
 * @param options `startMs`: where its clock begins, milliseconds; `unlock`: what comes of letting sound begin
 * @returns it, at a standstill
 */
export function trialEnvironment(options: { startMs?: number; unlock?: Promise<boolean> } = {}): TrialEnvironment {
  let clockMs = options.startMs ?? 1_000;
  let handles = 0;
  let isSeen = true;
  let trouble: CueTrouble | undefined;
  let wallAheadMs = 1_795_000_000_000;
  const waiting = new Map<number, { dueMs: number; fn: () => void }>();
  let listen: (trouble: CueTrouble | undefined) => void = () => undefined;
  const armed: TrialEnvironment['armed'] = [];
  const settings: Partial<CueSettings>[] = [];
  const heard: TrialEnvironment['heard'] = [];
  let coming: TrialEnvironment['heard'] = [];
  const hear = () => {
    heard.push(...coming.filter(({ atMs }) => atMs <= clockMs));
    coming = coming.filter(({ atMs }) => atMs > clockMs);
  };

  const frame = () => {
    const due = [...waiting].filter(([, { dueMs }]) => dueMs <= clockMs);
    for (const [handle] of due) waiting.delete(handle);
    for (const [, { fn }] of due) fn();
  };
  const cues: CuePlayer = {
    unlock: () => options.unlock ?? Promise.resolve(true),
    arm(list, originMs) {
      armed.push({ originMs, cues: list });
      coming = list
        .map(({ atMs, kind, words = '' }) => ({ atMs: originMs + atMs, kind, words }))
        .filter(({ atMs }) => atMs >= clockMs - 150)
        .sort((one, other) => one.atMs - other.atMs);
      hear();
    },
    disarm() {
      armed.push('disarm');
      coming = [];
    },
    say: (kind, words = '') => void heard.push({ atMs: clockMs, kind, words }),
    set: (changes) => void settings.push({ ...settings.at(-1), ...changes }),
    get trouble() {
      return trouble;
    },
    onTrouble: (fn) => {
      listen = fn;
      return () => undefined;
    },
    close: () => undefined,
  };
  return {
    armed,
    heard,
    settings,
    trouble(next) {
      trouble = next;
      listen(next);
    },
    setSeen(value) {
      isSeen = value;
    },
    isSeen: () => isSeen,
    nowMs: () => clockMs,
    wallMs: () => clockMs + wallAheadMs,
    wallNow: () => '2026-11-25T06:30:00.000+01:00',
    newId: () => 'trial-drill',
    requestFrame(fn, afterMs = 0) {
      handles += 1;
      waiting.set(handles, { dueMs: clockMs + afterMs, fn });
      return handles;
    },
    cancelFrame: (handle) => void waiting.delete(handle),
    createCues(given) {
      settings.push(given);
      return cues;
    },
    pass(spanMs) {
      for (let left = spanMs; left > 0; left -= FRAME_MS) {
        clockMs += Math.min(FRAME_MS, left);
        hear();
        frame();
      }
    },
    sleep(spanMs) {
      clockMs += spanMs;
    },
    setWall(byMs) {
      wallAheadMs += byMs;
    },
  };
}

/**
 * A prescription of one block: two sets of two reps, draw 3 s, hold 10 s, let down 3 s, rest 20 s and 60 s.
 * @param block what is different
 * @returns it
 */
export function trialPrescription(block: Partial<PrescribedBlock> = {}): Prescription {
  return {
    programTitle: 'Morning holds',
    date: '2026-11-25',
    blocks: [
      {
        block: 0,
        title: 'Steady holds',
        drill: 'holding',
        sets: 2,
        reps: 2,
        drawMs: 3_000,
        holdMs: 10_000,
        letDownMs: 3_000,
        restMs: 20_000,
        setRestMs: 60_000,
        letDownTo: 'rest',
        hand: 'usual',
        addedWeightLbf: 0,
        ...block,
      },
    ],
    reasons: [],
    cautions: [],
    durationMs: 0,
  };
}
