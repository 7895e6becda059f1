import { type DrillRecord, dayNumber, dayOfNumber, heldOf, type Prescription } from '@larkhold/engine';

/** A month is four weeks here, so that every one has the same mornings. */
const MONTH_DAYS = 28;
const MOST_MONTHS = 6;

/** The longest hold of four weeks. */
export interface HeldMonth {
  /** Last day of the four weeks, ISO 8601. */
  day: string;
  longestMs: number;
}

/**
 * What was held over the last half year, four weeks at a time: the longest hold that lasted as long as it was asked to.
 * @param drills in any order
 * @param tool that was drawn; other tools are another matter
 * @param today ISO 8601 day
 * @returns oldest first, weeks without a whole hold left out
 */
export function heldMonths(drills: readonly DrillRecord[], tool: Prescription['tool'], today: string): HeldMonth[] {
  const last = dayNumber(today);
  const longest = new Map<number, number>();
  for (const drill of drills) {
    const back = Math.floor((last - dayNumber(drill.date)) / MONTH_DAYS);
    if (back < 0 || back >= MOST_MONTHS || (drill.tool ?? 'bow') !== (tool ?? 'bow')) continue;
    const { longestMs } = heldOf(drill.reps);
    if (longestMs > 0) longest.set(back, Math.max(longest.get(back) ?? 0, longestMs));
  }
  return [...longest]
    .sort(([one], [other]) => other - one)
    .map(([back, longestMs]) => ({ day: dayOfNumber(last - back * MONTH_DAYS), longestMs }));
}
