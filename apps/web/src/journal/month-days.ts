import {
  dayNumber,
  dayOfNumber,
  daysOfWeek,
  type Journal,
  trueHeldMs,
  type WeekStart,
  weekListing,
} from '@larkhold/engine';

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
  const first = dayNumber(`${month}-01`);
  const byDate = new Map<string, MonthDay>();
  for (let index = 0; index < 31; index += 1) {
    const date = dayOfNumber(first + index);
    if (date.startsWith(month)) byDate.set(date, { date, heldMs: 0, arrowsCount: 0, hasPain: false });
  }
  for (const { date, reps, pain } of drills) {
    const day = byDate.get(date);
    if (!day) continue;
    day.heldMs += reps.reduce((sum, rep) => sum + trueHeldMs(rep), 0);
    day.hasPain ||= pain === true;
  }
  for (const { date, arrows, pain } of days) {
    const day = byDate.get(date);
    if (!day) continue;
    day.arrowsCount += (arrows ?? []).reduce((sum, { count }) => sum + count, 0);
    day.hasPain ||= pain === true;
  }
  return [...byDate.values()];
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
