import type { SessionView } from './session-view.ts';
import type { Walk } from './walk.ts';

/** A session at one moment, as plain JSON: stored after every rep, it survives a crash. The timeline is stored beside it by the caller. */
export interface SessionSnapshot {
  version: 1;
  id: string;
  program: string;
  programId?: string;
  startedAt: string;
  /** The timeline it belongs to, recognised by its length. */
  timelineMs: number;
  stepCount: number;
  state: SessionView['state'];
  walk: Walk;
  ledger: Ledger;
}

/** Where the clock stands and what has passed on it, milliseconds. */
export interface Ledger {
  /** The last moment at which the session was told the time; absent before it begins. */
  seenMs?: number;
  /** All time since it began, pauses included. */
  elapsedMs: number;
  /** Time in which it ran, pauses left out. */
  livedMs: number;
}
