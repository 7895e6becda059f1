import type { Journal } from '../journal/journal.ts';
import { totalsByDay } from '../load/totals.ts';

/** Months beside each other, to choose from. */
const MONTHS_SHOWN = 12;

/** What a journal offers to look at, month by month. */
export interface Months {
  /** The newest month that anything may be in, 'yyyy-mm': the present one, or a later one where a clock was wrong. */
  last: string;
  /** The newest month with a drill or a day in it; the present one in an empty journal. */
  newest: string;
  /** Time at full draw by month, milliseconds. */
  heldMs: ReadonlyMap<string, number>;
}

const kept = new WeakMap<Journal, { today: string; months: Months }>();

/**
 * The months of a journal, and what was held in each.
 * @param journal all of it
 * @param today ISO 8601 day
 * @returns made once for a journal and a day
 */
export function monthsOf(journal: Journal, today: string): Months {
  const found = kept.get(journal);
  if (found?.today === today) return found.months;
  const heldMs = new Map<string, number>();
  let newest = '';
  for (const [day, { holdMs }] of totalsByDay(journal)) {
    const month = day.slice(0, 7);
    heldMs.set(month, (heldMs.get(month) ?? 0) + holdMs);
    if (month > newest) newest = month;
  }
  const present = today.slice(0, 7);
  const months = { heldMs, newest: newest || present, last: newest > present ? newest : present };
  kept.set(journal, { today, months });
  return months;
}

/**
 * A month before or after another.
 * @param month 'yyyy-mm'
 * @param by how many months; below 0 before it
 * @returns 'yyyy-mm'
 */
export function monthBeside(month: string, by: number): string {
  return monthOf(numberOf(month) + by);
}

/** Months from the year 0 on. */
const numberOf = (month: string): number => Number(month.slice(0, 4)) * 12 + Number(month.slice(5)) - 1;

function monthOf(number: number): string {
  const [year, ofYear] = [Math.floor(number / 12), (number % 12) + 1];
  return `${String(year).padStart(4, '0')}-${String(ofYear).padStart(2, '0')}`;
}

/**
 * The twelve months that are offered with one: the last twelve, or twelve before those, and so on.
 * @param month the one that is shown, 'yyyy-mm'
 * @param last the newest there is
 * @returns twelve in order, `month` among them
 */
export function monthsBeside(month: string, last: string): string[] {
  const end = numberOf(last);
  const turns = Math.floor(Math.max(0, end - numberOf(month)) / MONTHS_SHOWN);
  const first = end - (turns + 1) * MONTHS_SHOWN + 1;
  return Array.from({ length: MONTHS_SHOWN }, (_, at) => monthOf(first + at));
}
