import type { DayEntry } from '../journal/journal.ts';

/** Places that are offered to choose from. */
const PLACES_OFFERED = 12;

/**
 * The place of a day: what the day says; while it has neither place nor arrows, the place of the last day before it that says one.
 * @param days the journal's days, in any order
 * @param entry the day
 * @returns the archer's own name for it; empty where nothing says
 */
export function placeOfDay(days: readonly DayEntry[], entry: DayEntry): string {
  if (entry.place !== undefined) return entry.place;
  if (entry.arrows?.some(({ count }) => count > 0)) return '';
  let last: DayEntry | undefined;
  for (const day of days) {
    if (day.place !== undefined && day.date < entry.date && (!last || day.date > last.date)) last = day;
  }
  return last?.place ?? '';
}

/**
 * The places that the archer has named, each once, the one shot at last first.
 * @param days the journal's days, in any order
 * @returns a dozen at most
 */
export function knownPlaces(days: readonly DayEntry[]): string[] {
  const byDate = [...days].sort((a, b) => (a.date < b.date ? 1 : -1));
  return [...new Set(byDate.flatMap(({ place }) => (place === undefined ? [] : [place])))].slice(0, PLACES_OFFERED);
}
