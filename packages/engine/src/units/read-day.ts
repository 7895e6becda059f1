import { dayNumberOf } from './calendar-day.ts';

/**
 * Reads a day that a file or a person gave.
 * @param date what should be an ISO 8601 day
 * @returns days from 1970-01-01; undefined if no calendar has such a day
 */
export function readDay(date: string): number | undefined {
  return dayNumberOf(date);
}
