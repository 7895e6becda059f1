import type { RepRecord } from './rep-record.ts';
import { seenHeldMs, trueHeldMs, trueOutcome } from './true-held-ms.ts';

/** What some reps add up to, milliseconds at full draw. */
export interface HeldSum {
  /** As it was seen where a camera saw it, else as the clock has it. */
  heldMs: number;
  /** Of `heldMs`: what a camera saw. */
  seenMs: number;
  /** Reps that were held in full, as far as clock and camera know. */
  fullCount: number;
  /** The longest of those; 0 where nothing was held in full. */
  longestMs: number;
}

/**
 * Adds up what was held: whatever shows, writes or reckons with a sum of holds has it from here.
 * @param reps as logged, of one drill or of many
 * @returns the sums
 * @source own: what a camera saw is nearer to the truth than what a clock assumes; see `trueHeldMs` and `trueOutcome`
 * @example heldOf(record.reps).heldMs / 1000 // seconds at full draw
 */
export function heldOf(reps: readonly RepRecord[]): HeldSum {
  const sum: HeldSum = { heldMs: 0, seenMs: 0, fullCount: 0, longestMs: 0 };
  for (const rep of reps) {
    const heldMs = trueHeldMs(rep);
    sum.heldMs += heldMs;
    sum.seenMs += seenHeldMs(rep);
    if (trueOutcome(rep) !== 'held') continue;
    sum.fullCount += 1;
    if (heldMs > sum.longestMs) sum.longestMs = heldMs;
  }
  return sum;
}
