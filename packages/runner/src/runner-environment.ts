import type { CuePlayer, CueSettings } from '@larkhold/cues';

/** What a drill needs from outside; a test brings its own. */
export interface RunnerEnvironment {
  /** The page clock, milliseconds; the same as the cue player's. */
  nowMs(): number;
  /** When a press with this stamp happened on the page clock, milliseconds, never in the future. Where left out, presses happen when they are handled. */
  pressedAtMs?(stampMs: number): number;
  /** Calls once the presses that wait to be handled have been. Where left out, none ever wait. */
  afterPresses?(fn: () => void): void;
  /** The instant by the archer's wall clock, ISO 8601 with the local offset. */
  wallNow(): string;
  /** A new identity for a record. */
  newId(): string;
  /** The wall clock, milliseconds. Nothing is computed from it: set against `nowMs` it tells that the machine slept. */
  wallMs?(): number;
  /**
   * Calls once: before the next picture, or within a quarter of a second when there is none (a hidden page); after a wait, where one is
   * given in milliseconds. @returns its handle
   */
  requestFrame(fn: () => void, afterMs?: number): number;
  cancelFrame(handle: number): void;
  /** Whether the page is on the screen. Where left out it counts as seen. */
  isSeen?(): boolean;
  createCues(settings: Partial<CueSettings>): CuePlayer;
  /** Keeps the screen on. @returns a function that ends it */
  keepAwake?(onTrouble: (message: string) => void): () => void;
}
