import type { SoundCue } from './press-sound.ts';

/** How far ahead cues are put on the audio clock, in milliseconds: longer than a page is ever busy, short enough to take back. */
export const LOOKAHEAD_MS = 8000;
/** A cue later than this is dropped: a late word is worse than none. */
export const STALE_MS = 150;
/** A cue that is further than this from its place is corrected: a little more than single readings of the clocks scatter. */
export const MISPLACED_MS = 0.3;

/** A cue at its time on the page clock. */
export interface ArmedCue {
  cue: SoundCue;
  /** Page clock, milliseconds. */
  dueMs: number;
}

/** What to do at a wake-up: what to start, and what is past. */
export interface CuePlan {
  start: ArmedCue[];
  stale: ArmedCue[];
  /** What stays for a later wake-up. */
  later: ArmedCue[];
}

/**
 * Cues at their page times, without those already past.
 *
 * @param cues in order of time, offsets in milliseconds
 * @param originMs page clock of offset 0, milliseconds
 * @param nowMs page clock now, milliseconds
 * @returns the cues still to come, in order; one due just now still counts
 */
export function armCues(cues: readonly SoundCue[], originMs: number, nowMs: number): ArmedCue[] {
  return cues
    .map((cue) => ({ cue, dueMs: originMs + cue.atMs }))
    .filter((armed) => armed.dueMs >= nowMs - STALE_MS)
    .sort((a, b) => a.dueMs - b.dueMs);
}

/**
 * Sorts waiting cues into what starts now, what is too late and what can wait.
 *
 * @param waiting not yet started, in order of time
 * @param nowMs page clock now, milliseconds
 * @param lookaheadMs how far ahead to start, milliseconds
 * @returns the plan; every waiting cue is in exactly one of its lists
 */
export function planCues(waiting: readonly ArmedCue[], nowMs: number, lookaheadMs: number = LOOKAHEAD_MS): CuePlan {
  const plan: CuePlan = { start: [], stale: [], later: [] };
  for (const armed of waiting) {
    if (armed.dueMs < nowMs - STALE_MS) plan.stale.push(armed);
    else if (armed.dueMs <= nowMs + lookaheadMs) plan.start.push(armed);
    else plan.later.push(armed);
  }
  return plan;
}
