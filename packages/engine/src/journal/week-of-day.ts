import { addToInstant } from '../units/instant.ts';
import { daysSince1970 } from './edit-order.ts';

/**
 * The ISO week of a day: that of its Thursday.
 * @param day ISO 8601 day.
 * @returns '2026-W48'.
 * @source ISO 8601:2004, 2.2.10 and 3.2.2.
 */
export function isoWeek(day: string): string {
  const weekday = (((dayNumber(day) + 3) % 7) + 7) % 7; // 1970-01-01 was a Thursday; Monday is 0
  const thursday = addToInstant(`${day}T00:00:00Z`, (3 - weekday) * 86_400_000).slice(0, 10);
  const year = thursday.slice(0, 4);
  const week = Math.floor((dayNumber(thursday) - dayNumber(`${year}-01-01`)) / 7) + 1;
  return `${year}-W${String(week).padStart(2, '0')}`;
}

function dayNumber(day: string): number {
  return daysSince1970(Number(day.slice(0, 4)), Number(day.slice(5, 7)), Number(day.slice(8, 10)));
}
