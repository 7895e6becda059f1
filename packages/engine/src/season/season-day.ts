import { compareInstants } from '../journal/edit-order.ts';
import { dayNumber, mondayNumber } from '../units/calendar-day.ts';
import type { Competition, DatedSessions, ProgramRef, Season, SeasonBlock } from './season.ts';
import { weekdays } from './season.ts';

/** Who says what a day holds. */
export type Planner =
  | { rule: 'weekday'; block: string; week: number; ofWeeks: number }
  | { rule: 'coach'; by: string; madeAt: string };

/** What a season has written for a day, before anything is known of the archer. */
export interface WrittenDay {
  programs: readonly ProgramRef[];
  /** Absent where the season says nothing of the day. */
  planner?: Planner;
  /** The minutes that a coach gives each of them. */
  minutes?: number;
}

/** Why less is done on a day, and the share of the reps that is kept. */
export type Lighter = { keepRatio: number } & (
  | { rule: 'lighterWeek'; block: string; week: number; ofWeeks: number }
  | { rule: 'taper'; competition: string; day: string; daysLeft: number }
);

/**
 * What a season has written for a day. A coach's dated sessions replace the weekdays; of two answers for a day the later made one counts,
 * and of two blocks the one that begins later. Nothing is ever added up.
 * @param season a valid season
 * @param day days from 1970-01-01
 * @returns the programs in order, and who says so
 */
export function writtenDay(season: Season, day: number): WrittenDay {
  const answer = lastAnswer(season.dated, day);
  if (answer) {
    const { by, madeAt, sessions } = answer;
    const session = sessions.find((one) => dayNumber(one.day) === day);
    const minutes = session?.minutes === undefined ? {} : { minutes: session.minutes };
    return { programs: session?.programs ?? [], planner: { rule: 'coach', by, madeAt }, ...minutes };
  }
  const block = blockOn(season.blocks, day);
  if (!block) return { programs: [] };
  const name = weekdays[day - mondayNumber(day)]!;
  return { programs: block.days[name] ?? [], planner: { rule: 'weekday', ...weekOf(block, day) } };
}

/**
 * The lighter week or the taper that a day lies in; where both do, the deeper one acts and they are not multiplied.
 * @param season a valid season
 * @param day days from 1970-01-01
 * @returns the share to keep and why; undefined on a usual day
 * @source the taper from memory: Bosquet et al. 2007, Med Sci Sports Exerc 39:1358 (two weeks, 41-60 % less volume, intensity kept). Its first step,
 * and the one week before a middle competition, are ours
 */
export function lighterOn(season: Season, day: number): Lighter | undefined {
  const found: Lighter[] = [];
  const block = blockOn(season.blocks, day);
  if (block) {
    const week = weekOf(block, day);
    if (block.lighterWeeks.includes(week.week)) found.push({ keepRatio: block.keep, rule: 'lighterWeek', ...week });
  }
  for (const { title, day: date, importance } of season.competitions) {
    const daysLeft = dayNumber(date) - day;
    const keepRatio = taperKeep(importance, daysLeft);
    if (keepRatio !== undefined) found.push({ keepRatio, rule: 'taper', competition: title, day: date, daysLeft });
  }
  return found.sort((a, b) => a.keepRatio - b.keepRatio)[0];
}

/** The last days before a main competition in which less is done. */
export const TAPER_DAYS = 14;

/**
 * The share of the reps that is kept on a day before a competition.
 * @param importance of the competition
 * @param daysLeft until its first day
 * @returns 0.5 to 0.7; undefined where nothing is reduced
 * @source see `lighterOn`
 */
export function taperKeep(importance: Competition['importance'], daysLeft: number): number | undefined {
  if (daysLeft < 0 || importance === 'minor') return undefined;
  if (importance === 'middle') return daysLeft <= TAPER_DAYS / 2 ? 0.7 : undefined;
  if (daysLeft > TAPER_DAYS) return undefined;
  return daysLeft > TAPER_DAYS / 2 ? 0.7 : 0.5;
}

/**
 * The block that a day lies in.
 * @param blocks of a season
 * @param day days from 1970-01-01
 * @returns the one that begins last, and of those the last in the file; undefined where there is none
 */
export function blockOn(blocks: readonly SeasonBlock[], day: number): SeasonBlock | undefined {
  return blocks
    .filter(({ from, weeks }) => dayNumber(from) <= day && day < dayNumber(from) + 7 * weeks)
    .reduce<SeasonBlock | undefined>((last, block) => (last && last.from > block.from ? last : block), undefined);
}

function weekOf({ title, from, weeks }: SeasonBlock, day: number) {
  return { block: title, week: Math.floor((day - dayNumber(from)) / 7) + 1, ofWeeks: weeks };
}

function lastAnswer(dated: readonly DatedSessions[], day: number): DatedSessions | undefined {
  return dated
    .filter(({ from, to }) => dayNumber(from) <= day && day <= dayNumber(to))
    .reduce<DatedSessions | undefined>(
      (last, one) => (last && compareInstants(last.madeAt, one.madeAt) > 0 ? last : one),
      undefined,
    );
}
