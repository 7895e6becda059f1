import { dayNumber, dayOfNumber, isoWeek, mondayNumber } from './calendar-day.ts';

/** The day on which an archer's list of days begins. */
export type WeekStart = 'monday' | 'sunday' | 'saturday';

/** Days by which a list begins before the ISO week's Monday. Either way it holds that week's Thursday. */
const daysBeforeMonday: Readonly<Record<WeekStart, number>> = { monday: 0, sunday: 1, saturday: 2 };

/**
 * The Monday of an ISO week.
 * @param week '2026-W48'
 * @returns ISO 8601 day; undefined when there is no such week
 * @source ISO 8601:2004, 2.2.10: the first week of a year holds its fourth of January
 */
export function mondayOfWeek(week: string): string | undefined {
  const parts = /^(\d{4})-W(\d{2})$/.exec(week);
  if (!parts) return undefined;
  const monday = dayOfNumber(mondayNumber(dayNumber(`${parts[1]}-01-04`)) + (Number(parts[2]) - 1) * 7);
  return isoWeek(monday) === week ? monday : undefined;
}

/**
 * The week that is a number of weeks away.
 * @param week an ISO week that exists
 * @param count weeks, negative for earlier ones
 * @returns an ISO week
 * @throws RangeError when there is no such week
 */
export function shiftWeek(week: string, count: number): string {
  return isoWeek(shiftDay(checkedMonday(week), count * 7));
}

/**
 * The day that is a number of days away.
 * @param day ISO 8601
 * @param count days, negative for earlier ones
 * @returns ISO 8601 day
 */
export function shiftDay(day: string, count: number): string {
  return dayOfNumber(dayNumber(day) + count);
}

/**
 * The seven days that a week's page lists.
 * @param week an ISO week that exists
 * @param start the day the list begins with
 * @returns seven ISO 8601 days in order
 * @throws RangeError when there is no such week
 */
export function daysOfWeek(week: string, start: WeekStart): string[] {
  const first = dayNumber(checkedMonday(week)) - daysBeforeMonday[start];
  return Array.from({ length: 7 }, (_, index) => dayOfNumber(first + index));
}

/**
 * The week on whose page a day is listed.
 * @param day ISO 8601
 * @param start the day a list begins with
 * @returns an ISO week
 */
export function weekListing(day: string, start: WeekStart): string {
  return isoWeek(shiftDay(day, daysBeforeMonday[start]));
}

/**
 * The ISO number of a day in its week.
 * @param day ISO 8601
 * @returns 1 for Monday to 7 for Sunday
 */
export function weekdayOf(day: string): number {
  const number = dayNumber(day);
  return number - mondayNumber(number) + 1;
}

function checkedMonday(week: string): string {
  const monday = mondayOfWeek(week);
  if (monday === undefined) throw new RangeError(`week is '${week}'; expected an ISO week such as 2026-W48`);
  return monday;
}
