import { isOfProgram } from '../journal/is-of-program.ts';
import { dayNumber, dayOfNumber } from '../units/calendar-day.ts';
import type { ProgramRef, Season } from './season.ts';
import { type Lighter, lighterOn, type Planner, writtenDay } from './season-day.ts';

/** What a season reads of what is known of the archer. */
export interface SeasonArcher {
  /** Whole or part years. */
  ageYears?: number;
  /** The last day on which a bow or a band was drawn or an arrow shot, ISO 8601. */
  lastDrawDay?: string;
  /** Days in a row with a bow or a band in the hand, up to that day. */
  rowDays: number;
  /** The last painful day, ISO 8601, and the stage of the way back; absent: clear, as far as anybody said. */
  pain?: { day?: string; stage?: string };
  /** Tests that were done: of which program, on which day. */
  tests?: readonly { program: string; programId?: string; date: string }[];
}

/** Why a day is better without a drill. */
export type RestReason =
  | { rule: 'pain'; day: string }
  | { rule: 'competition'; title: string; day: string }
  | { rule: 'dayBeforeCompetition'; title: string; day: string }
  | { rule: 'restDay'; from: string; to: string; why?: string }
  | { rule: 'daysInRow'; days: number }
  | { rule: 'youngDayBetween'; ageYears: number; lastDrawDay: string }
  | { rule: 'noSession'; planner: Planner; nextDay?: string }
  | { rule: 'programMissing'; titles: readonly string[] }
  | { rule: 'outsideSeason'; nextDay?: string };

/** One thing that a day holds; `minutes`: as many as a coach gives it. */
export type Due =
  | { kind: 'program'; program: ProgramRef; because: Planner; lighter?: Lighter; minutes?: number }
  | { kind: 'test'; program: ProgramRef; because: { rule: 'test'; day: string; lateDays: number } }
  | { kind: 'rest'; because: RestReason };

/** Days in a row with a bow, arrows counted, that are never gone beyond. bow-international.com, "Ask the experts 6". */
export const MOST_DAYS_IN_ROW = 6;
/**
 * Younger archers do not drill on two days running: two or three sessions a week on non-consecutive days; Lloyd et al. 2014, Br J Sports Med,
 * doi 10.1136/bjsports-2013-092952, as a public page sums it up.
 */
export const YOUNG_UNTIL_YEARS = 16;
/** On how many days before a competition a test is not done. Own, careful: no source. */
export const TEST_FREE_DAYS = 2;
/** A test that could not be done on its day stays due so much longer, days. Own: no source. */
export const TEST_WAITS_DAYS = 6;
const LOOK_AHEAD_DAYS = 28;

/**
 * What is due on a day: programs in their order, one test, or rest with its reason. Whatever a file says, there is rest on the day of a competition and
 * the day before, after six days in a row, and between two days for the young.
 * @param season a valid season
 * @param known what is known of the archer
 * @param today ISO 8601 day
 * @param hasProgram whether the archer has a program; without it every program is thought to be there
 * @returns at least one entry; a rest is alone, and so is a test
 * @throws RangeError when there is no such day
 * @example dueToday(sensibleSeason({ today: '2026-11-23' }), { rowDays: 0 }, '2026-11-23')[0]!.kind // 'program'
 */
export function dueToday(
  season: Season,
  known: SeasonArcher,
  today: string,
  hasProgram: (ref: ProgramRef) => boolean = () => true,
): Due[] {
  const day = dayNumber(today);
  const rest = (because: RestReason): Due[] => [{ kind: 'rest', because }];
  const reason = restReason(season, known, day);
  if (reason) return rest(reason);
  const test = testOn(season, known, day, hasProgram);
  if (test) return [test];
  const { programs, planner, minutes } = writtenDay(season, day);
  const nextDay = nextWrittenDay(season, day);
  const next = nextDay === undefined ? {} : { nextDay };
  if (!planner) return rest({ rule: 'outsideSeason', ...next });
  if (programs.length === 0) return rest({ rule: 'noSession', planner, ...next });
  const there = programs.filter(hasProgram);
  if (there.length === 0) return rest({ rule: 'programMissing', titles: programs.map(({ title }) => title) });
  const lighter = lighterOn(season, day);
  const more = { ...(lighter ? { lighter } : {}), ...(minutes === undefined ? {} : { minutes }) };
  return there.map((program) => ({ kind: 'program', program, because: planner, ...more }));
}

/** What makes a day one of rest whatever is written for it; the most serious first. */
function restReason(season: Season, known: SeasonArcher, day: number): RestReason | undefined {
  const { pain, ageYears, lastDrawDay } = known;
  if (pain?.day !== undefined && dayNumber(pain.day) === day) return { rule: 'pain', day: pain.day };
  const competition = competitionReason(season, day);
  if (competition) return competition;
  const restDays = season.restDays.find(({ from, to }) => dayNumber(from) <= day && day <= dayNumber(to));
  if (restDays) return { rule: 'restDay', ...restDays };
  const days = daysInRow(known, day);
  if (days >= MOST_DAYS_IN_ROW) return { rule: 'daysInRow', days };
  if (ageYears !== undefined && ageYears < YOUNG_UNTIL_YEARS && days > 0) {
    return { rule: 'youngDayBetween', ageYears, lastDrawDay: lastDrawDay! };
  }
  return undefined;
}

function competitionReason({ competitions }: Season, day: number): RestReason | undefined {
  for (const { title, day: first, lastDay = first } of competitions) {
    if (dayNumber(first) <= day && day <= dayNumber(lastDay)) return { rule: 'competition', title, day: first };
  }
  const next = competitions.find(({ day: first }) => dayNumber(first) === day + 1);
  return next && { rule: 'dayBeforeCompetition', title: next.title, day: next.day };
}

/** Days in a row with a bow up to yesterday. A bow that was drawn today already adds no day. */
function daysInRow({ lastDrawDay, rowDays }: SeasonArcher, day: number): number {
  if (lastDrawDay === undefined) return 0;
  const last = dayNumber(lastDrawDay);
  if (last === day) return Math.max(0, rowDays - 1);
  return last === day - 1 ? rowDays : 0;
}

/** The test that is due: its day has come, it was not done since, and nothing is against it today. */
function testOn(
  season: Season,
  known: SeasonArcher,
  day: number,
  hasProgram: (ref: ProgramRef) => boolean,
): Due | undefined {
  if (known.pain?.stage !== undefined || isNearCompetition(season, day)) return undefined;
  for (const { day: date, program } of season.tests) {
    const lateDays = day - dayNumber(date);
    const isOpen = lateDays >= 0 && lateDays <= TEST_WAITS_DAYS && hasProgram(program);
    const isDone = known.tests?.some(
      (test) => test.date >= date && dayNumber(test.date) <= day && isOfProgram(test, program),
    );
    if (isOpen && !isDone) return { kind: 'test', program, because: { rule: 'test', day: date, lateDays } };
  }
  return undefined;
}

/**
 * Whether a day is too near a competition for a test.
 * @param season a valid season
 * @param day days from 1970-01-01
 * @returns true on its days and on the two before
 */
export function isNearCompetition({ competitions }: Season, day: number): boolean {
  return competitions.some(({ day: first, lastDay = first }) => {
    return dayNumber(first) - TEST_FREE_DAYS <= day && day <= dayNumber(lastDay);
  });
}

function nextWrittenDay(season: Season, day: number): string | undefined {
  for (let next = day + 1; next <= day + LOOK_AHEAD_DAYS; next++) {
    if (writtenDay(season, next).programs.length > 0) return dayOfNumber(next);
  }
  return undefined;
}
