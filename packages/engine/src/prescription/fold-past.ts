import { bodyAfter, recentDrills, recentLoads } from '../archer/body-state.ts';
import { logDays } from '../archer/logged-days.ts';
import type { Past } from '../archer/past.ts';
import type { DrillRecord } from '../journal/drill-record.ts';
import type { DayEntry } from '../journal/journal.ts';
import { lastDrill } from '../journal/last-drill.ts';
import type { Program } from '../program/program.ts';
import { dayNumber } from '../units/calendar-day.ts';
import { isOlderArcher } from './layoff.ts';
import { programAfter, programKey } from './program-state.ts';
import { validProgram } from './valid-program.ts';

/**
 * The version of the rules that a journal is folded by. Whoever changes what a fold gives raises it, so that no folded past of older rules is
 * continued: a test that folds a fixed journal turns red until it is raised.
 */
export const FOLD_VERSION = 6;

/**
 * Folds everything before a day, so that a later start need not read it: what `prescribe`, `seasonToday`, `todaysProgram`, `knowArcher` and
 * `knowForSeason` give with it and the rest of the journal is what they give with the whole journal.
 * @param input all drill records and the diary, in any order; the first day that is not to be folded, ISO 8601; the programs that may be asked
 * for, and the archer's age
 * @returns the past, plain data that JSON keeps; undefined where there is nothing before the day, or where a record's date is invalid: what could
 * not be placed would be told no more
 * @throws TypeError when a program is not valid; RangeError when there is no such day
 * @example foldPast({ records: [], before: '2026-11-01', programs: [] }) // undefined
 */
export function foldPast(input: {
  records: readonly DrillRecord[];
  days?: readonly DayEntry[];
  before: string;
  programs: readonly Program[];
  ageYears?: number;
}): Past | undefined {
  const { before, ageYears } = input;
  const { days, impossibleDates } = logDays(input.records, input.days);
  const end = dayNumber(before);
  const count = days.findLastIndex(({ day }) => day < end) + 1;
  const [first] = days;
  if (first === undefined || count === 0 || impossibleDates.length > 0) return undefined;
  const isOlder = isOlderArcher(ageYears);
  const folded = days.slice(0, count);
  const last = lastDrill(folded.flatMap(({ drills }) => drills));
  return {
    ...{ version: FOLD_VERSION, before, firstDay: first.day },
    drillCount: folded.reduce((sum, { drills }) => sum + drills.length, 0),
    dayCount: folded.filter(({ entry }) => entry !== undefined).length,
    body: { ...bodyAfter(days, count), loads: recentLoads(days, count), recent: recentDrills(days, count) },
    programs: input.programs.map(validProgram).map((program) => ({
      key: programKey(program, isOlder),
      state: programAfter(program, days, count, isOlder),
    })),
    ...(last ? { lastDrill: { startedAt: last.startedAt, programId: last.programId ?? last.program } } : {}),
  };
}

/**
 * Whether a folded past holds a program.
 * @param past as `foldPast` gives it
 * @param program any
 * @param ageYears the archer's age
 * @returns true if it does
 * @throws TypeError when the program is not valid
 */
export function pastHolds(past: Past, program: Program, ageYears?: number): boolean {
  const key = programKey(validProgram(program), isOlderArcher(ageYears));
  return past.programs.some((one) => one.key === key);
}
