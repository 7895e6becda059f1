import { taperKeep } from '../season/season-day.ts';
import { dayOfNumber } from '../units/calendar-day.ts';

/**
 * The lighter two weeks before a competition: fewer reps, the hold as it is.
 * @param day days from 1970-01-01
 * @param competitionDay days from 1970-01-01
 * @returns the share to keep; undefined outside the two weeks
 * @source from memory: Bosquet et al. 2007, Med Sci Sports Exerc 39:1358 (two weeks, 41-60 % less volume, intensity kept). The step between is ours.
 */
export function taper(
  day: number,
  competitionDay: number | undefined,
): { keep: number; facts: { daysLeft: number; competition: string } } | undefined {
  if (competitionDay === undefined) return undefined;
  const daysLeft = competitionDay - day;
  const keep = taperKeep('main', daysLeft);
  return keep === undefined ? undefined : { keep, facts: { daysLeft, competition: dayOfNumber(competitionDay) } };
}
