import { arrowsOf } from '../archer/day-sum.ts';
import type { DayEntry } from '../journal/journal.ts';

/** From how many arrows in a day on there is less drilling: about two rounds of 72. Common practice, no source. */
export const MANY_ARROWS = 140;

/**
 * Whether a day's arrows ask for less drilling.
 * @param entry the diary's; undefined on a day without an entry
 * @returns true from about two rounds on
 */
export function hasManyArrows(entry: DayEntry | undefined): boolean {
  return arrowsOf(entry) >= MANY_ARROWS;
}
