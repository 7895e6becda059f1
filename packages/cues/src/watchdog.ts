import { type CueTrouble, cueTroubles } from './cue-trouble.ts';

/** One look at the audio clock. */
export interface AudioLook {
  /** Page clock, milliseconds. */
  pageMs: number;
  /** Audio clock, seconds. */
  audioSeconds: number;
  /** The context's state, or `none` where there is no context. */
  state: AudioContextState | 'interrupted' | 'none';
  /** Whether a cue is waited for; without one a still clock is no trouble. */
  isArmed: boolean;
}

/** Notices when nothing can be heard, and tells. */
export interface Watchdog {
  look(at: AudioLook): void;
  /** Whether the audio clock stands still, so that nothing may be put on it. */
  readonly isStill: boolean;
  /** What the first press gave. */
  unlocked(isHeard: boolean, hasContext: boolean): void;
  setWordless(isWordless: boolean): void;
  readonly trouble: CueTrouble | undefined;
  onTrouble(listen: (trouble: CueTrouble | undefined) => void): () => void;
}

/** The audio clock moves in steps of some ten milliseconds; no movement for this long is no step, in milliseconds. */
export const STILL_MS = 350;

/**
 * A watchdog over the audio clock.
 *
 * @returns the watchdog, content at first
 */
export function createWatchdog(): Watchdog {
  let moved: { pageMs: number; audioSeconds: number } | undefined;
  let trouble: CueTrouble | undefined;
  let hasRun = false;
  let isStill = false;
  let isWordless = false;
  let still: CueTrouble | undefined;
  const listeners = new Set<(trouble: CueTrouble | undefined) => void>();

  function tell(): void {
    const next = still ?? (isWordless ? cueTroubles.wordless : undefined);
    if (next === trouble) return;
    trouble = next;
    for (const listen of [...listeners]) listen(trouble);
  }

  return {
    look({ pageMs, audioSeconds, state, isArmed }) {
      if (state !== 'running') {
        moved = undefined;
        isStill = true;
        if (isArmed) still = state === 'none' ? cueTroubles.none : hasRun ? cueTroubles.stalled : cueTroubles.refused;
        return tell();
      }
      const hasMoved = moved === undefined || moved.audioSeconds !== audioSeconds;
      if (hasMoved) {
        if (moved !== undefined) hasRun = true;
        moved = { pageMs, audioSeconds };
        isStill = false;
        still = undefined;
      } else if (moved !== undefined && pageMs - moved.pageMs > STILL_MS) {
        isStill = true;
        if (isArmed) still = cueTroubles.stalled;
      }
      tell();
    },
    get isStill() {
      return isStill;
    },
    unlocked(isHeard, hasContext) {
      if (isHeard) hasRun = true;
      still = isHeard ? undefined : hasContext ? cueTroubles.refused : cueTroubles.none;
      isStill = !isHeard;
      tell();
    },
    setWordless(value) {
      isWordless = value;
      tell();
    },
    get trouble() {
      return trouble;
    },
    onTrouble(listen) {
      listeners.add(listen);
      return () => listeners.delete(listen);
    },
  };
}
