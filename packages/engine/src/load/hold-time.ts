import type { DrillRecord } from '../journal/drill-record.ts';
import { type HeldSum, heldOf } from '../journal/held-of.ts';

/**
 * Time at full draw over some drills, as it was seen where a camera saw it, else as the clock has it; removed records don't count.
 * @param records drills in any order
 * @returns seconds
 */
export function holdTime(records: readonly DrillRecord[]): number {
  return secondsOf(records, 'heldMs');
}

/**
 * Of the time at full draw over some drills, what a camera saw; the rest is the clock's. Removed records don't count.
 * @param records drills in any order
 * @returns seconds
 */
export function seenHoldTime(records: readonly DrillRecord[]): number {
  return secondsOf(records, 'seenMs');
}

function secondsOf(records: readonly DrillRecord[], key: keyof HeldSum): number {
  let sumMs = 0;
  for (const record of records) {
    if (!record.removed) sumMs += heldOf(record.reps)[key];
  }
  return sumMs / 1000;
}
