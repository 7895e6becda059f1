import type { Journal } from '../journal/journal.ts';
import { createJournal } from '../journal/merge-journals.ts';
import { createTotals, totalsByDay } from '../load/totals.ts';
import { dayNumber, dayOfNumber } from '../units/calendar-day.ts';
import { daysOfWeek, type WeekStart, weekListing } from '../units/iso-weeks.ts';

/** What a day of the month shows. */
export interface MonthDay {
  date: string;
  heldMs: number;
  arrowsCount: number;
  hasPain: boolean;
}

/** A week of the month: its days in order, undefined where another month has the day. */
export interface MonthWeek {
  week: string;
  days: readonly (MonthDay | undefined)[];
}

/**
 * What was done in a month, day by day.
 * @param journal all of it
 * @param month 'yyyy-mm'
 * @returns every day of the month in order
 */
export function daysOfMonth({ drills, days }: Journal, month: string): MonthDay[] {
  const isIn = ({ date }: { date: string }): boolean => date.startsWith(month);
  const done = { ...createJournal(), drills: drills.filter(isIn), days: days.filter(isIn) };
  const totals = totalsByDay(done);
  const painful = new Set([...done.drills, ...done.days].filter(({ pain }) => pain === true).map(({ date }) => date));
  const first = dayNumber(`${month}-01`);
  return Array.from({ length: 31 }, (_, index) => dayOfNumber(first + index))
    .filter((date) => date.startsWith(month))
    .map((date) => {
      const { holdMs, arrowsCount } = totals.get(date) ?? createTotals();
      return { date, heldMs: holdMs, arrowsCount, hasPain: painful.has(date) };
    });
}

/**
 * The days of a month in rows of a week.
 * @param days of one month, in order
 * @param start the day that a week's list begins with
 * @returns the weeks in order
 */
export function weeksOfMonth(days: readonly MonthDay[], start: WeekStart): MonthWeek[] {
  const weeks = [...new Set(days.map(({ date }) => weekListing(date, start)))];
  const byDate = new Map(days.map((day) => [day.date, day]));
  return weeks.map((week) => ({ week, days: daysOfWeek(week, start).map((date) => byDate.get(date)) }));
}
