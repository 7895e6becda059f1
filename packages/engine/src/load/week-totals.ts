import type { Journal } from '../journal/journal.ts';
import { isoWeek } from '../units/calendar-day.ts';
import { addTotals, createTotals, type Totals, totalsByDay } from './totals.ts';

/**
 * Adds up one ISO week, Monday to Sunday, whatever day the archer's own week starts on.
 * @param journal any journal.
 * @param week ISO 8601 week, '2026-W48'.
 * @returns its totals.
 */
export function weekTotals(journal: Journal, week: string): Totals {
  const sum = createTotals();
  for (const [day, totals] of totalsByDay(journal)) {
    if (isoWeek(day) === week) addTotals(sum, totals);
  }
  return sum;
}
