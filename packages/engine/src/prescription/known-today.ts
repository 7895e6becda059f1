import type { Archer } from '../archer/archer.ts';
import { type BodyState, bodyAfter, recentLoads } from '../archer/body-state.ts';
import type { DayLoad } from '../archer/logged-day.ts';
import { countUntil, logDays } from '../archer/logged-days.ts';
import { type PainStage, painAnswer, painOn } from '../archer/pain-state.ts';
import { dayOfPast, type Past } from '../archer/past.ts';
import type { DrillRecord } from '../journal/drill-record.ts';
import type { DayEntry } from '../journal/journal.ts';
import type { Program } from '../program/program.ts';
import type { RestReason } from '../season/due-today.ts';
import type { Lighter } from '../season/season-day.ts';
import { isOlderArcher } from './layoff.ts';
import { type ProgramState, programAfter } from './program-state.ts';

/** Everything that today's numbers are made from. Days are counted from 1970-01-01. */
export interface KnownToday {
  program: Program;
  archer: Archer;
  day: number;
  body: BodyState;
  /** What the last five weeks asked of the body; only few programs ask. */
  loads: () => readonly DayLoad[];
  state: ProgramState;
  /** Days since anything was drawn; absent where nothing ever was. */
  daysAway?: number;
  isPainful: boolean;
  /** Where the way back after pain has come to. */
  stage?: PainStage;
  painAnswers: number;
  today?: DayEntry;
  yesterday?: DayEntry;
  readiness?: 'fresh' | 'as usual' | 'heavy';
  competitionDay?: number;
  /** What makes this a lighter day in the season. */
  lighter?: Lighter;
  /** Why the season has rest today. */
  seasonRest?: RestReason;
  /** Records that could not be used. */
  laterCount: number;
  impossibleDates: readonly string[];
}

/**
 * Gathers what is known on a day.
 * @param program a valid program
 * @param given the caller's input, days as numbers
 * @returns the body, the program's state, and today's own words
 */
export function knowToday(
  program: Program,
  given: {
    records: readonly DrillRecord[];
    days?: readonly DayEntry[];
    past?: Past;
    day: number;
    archer: Archer;
    readiness?: KnownToday['readiness'];
    competitionDay?: number;
    lighter?: Lighter;
    seasonRest?: RestReason;
  },
): KnownToday {
  const { day, archer } = given;
  const { days, impossibleDates } = logDays(given.records, given.days, dayOfPast(given.past));
  const count = countUntil(days, day);
  const laterCount = days.slice(count).reduce((sum, { drills }) => sum + drills.length, 0);
  const isOlder = isOlderArcher(archer.ageYears);
  const body = bodyAfter(days, count);
  const state = programAfter(program, days, count, isOlder);
  const onDay = (wished: number) => days.slice(Math.max(0, count - 2), count).find((one) => one.day === wished);
  const today = onDay(day);
  const { stage, answers } = painOn(body.pain, day);
  return {
    program,
    archer,
    day,
    body,
    loads: () => recentLoads(days, count),
    state,
    laterCount,
    impossibleDates,
    painAnswers: answers,
    daysAway: body.lastDay === undefined ? undefined : day - body.lastDay,
    isPainful: today !== undefined && painAnswer(today) === true,
    stage,
    today: today?.entry,
    yesterday: onDay(day - 1)?.entry,
    readiness: given.readiness ?? today?.entry?.readiness,
    competitionDay: given.competitionDay,
    lighter: given.lighter,
    seasonRest: given.seasonRest,
  };
}
