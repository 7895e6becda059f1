import type { Kit } from '@larkhold/store';

const DAY_MS = 86_400_000;

/**
 * Tells whether a backup is due.
 * @param backup how often, and when the last one was
 * @param now the instant, ISO 8601 UTC
 * @returns true when the days are over, none was made yet, or the last one lies that far ahead: then a clock was wrong. Never while it is off.
 */
export function isBackupDue({ everyDays, lastAt }: Kit['backup'], now: string): boolean {
  if (everyDays === undefined) return false;
  const days = daysSince(lastAt, now);
  return days === undefined || Math.abs(days) >= everyDays;
}

/**
 * Days from an instant to another, by the calendar in UTC.
 * @param at ISO 8601, or nothing
 * @param now ISO 8601
 * @returns whole days; undefined where `at` says nothing
 */
export function daysSince(at: string | undefined, now: string): number | undefined {
  const days = (Date.parse(now.slice(0, 10)) - Date.parse((at ?? '').slice(0, 10))) / DAY_MS;
  return Number.isFinite(days) ? Math.round(days) : undefined;
}
