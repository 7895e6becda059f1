import type { Journal } from '../journal/journal.ts';
import { dayNumber } from '../units/calendar-day.ts';
import { sessionLoad } from './session-load.ts';

/** The load of each day of a span, and what could not be counted. */
export interface DailyLoads {
  /** One number a day, oldest first; a day of rest is 0. Arbitrary units: effort times minutes. */
  loads: number[];
  /** Drills, shooting and other work in the span with no effort or no length written down. They count as nothing. */
  unratedCount: number;
}

/**
 * Load of every day: drills, shooting and other work, each its effort times its minutes.
 * @param journal any journal; removed things don't count
 * @param lastDay ISO 8601 day, the last of the span
 * @param dayCount days in the span, a whole number from 1 to 4000
 * @returns one load a day, and how many things could not be counted
 * @throws RangeError when there is no such day or the count is out of range
 * @source Foster et al. 2001, J Strength Cond Res 15:109: the loads of a day's sessions add up
 */
export function dailyLoads(journal: Journal, lastDay: string, dayCount: number): DailyLoads {
  if (!Number.isInteger(dayCount) || dayCount < 1 || dayCount > 4000)
    throw new RangeError(`dayCount is ${dayCount}; expected a whole number from 1 to 4000`);
  const firstNumber = dayNumber(lastDay) - dayCount + 1;
  const loads = new Array<number>(dayCount).fill(0);
  let unratedCount = 0;

  for (const drill of journal.drills) {
    const minutes = drill.durationMs === undefined ? undefined : drill.durationMs / 60_000;
    if (!drill.removed) add(drill.date, drill.effort, minutes);
  }
  for (const day of journal.days) {
    if (day.removed) continue;
    const hasShot = day.shootingMinutes !== undefined || day.arrows?.some((arrows) => arrows.count > 0);
    if (hasShot) add(day.date, day.shootingEffort, day.shootingMinutes);
    for (const work of day.work ?? []) add(day.date, work.effort, work.minutes);
  }
  return { loads, unratedCount };

  function add(date: string, effort: number | undefined, minutes: number | undefined) {
    const place = dayNumber(date) - firstNumber;
    if (place < 0 || place >= dayCount) return;
    if (effort === undefined || minutes === undefined) unratedCount += 1;
    // A clock that was wrong for a day can leave a session longer than a day.
    else loads[place] = (loads[place] ?? 0) + sessionLoad(effort, Math.min(minutes, 1440));
  }
}
