import type { DrillRecord } from '../journal/drill-record.ts';
import type { Program } from '../program/program.ts';
import { idOf } from '../program/program-id.ts';
import { findProgram } from '../season/find-program.ts';
import type { SeasonToday } from '../season/season-today.ts';
import { dayNumber, dayOfNumber } from '../units/calendar-day.ts';
import { duePrograms } from './todays-program.ts';

/** How many days are never folded into the past: they change most, and are what a page shows first. */
const RECENT_DAYS = 42;
/** And how many drills, however long ago. */
const RECENT_DRILLS = 30;
/** A past that is older than that by this many days still serves. */
const RENEWED_DAYS = 28;
/** Programs that a past holds at most. */
const MOST_PROGRAMS = 8;

/**
 * The first day that is not to be folded into the past.
 * @param drills of the journal, in any order
 * @param today ISO 8601 day
 * @param before that of the past there is, ISO 8601: it stays while it serves, so that little is folded and written again
 * @returns ISO 8601 day
 * @throws RangeError when there is no such day
 */
export function pastEnd(drills: readonly DrillRecord[], today: string, before?: string): string {
  const dates = drills.map(({ date }) => date).sort();
  const last = dayOfNumber(dayNumber(today) - RECENT_DAYS);
  const [wanted = last] = [dates.at(-RECENT_DRILLS) ?? last, last].sort();
  const serves = before !== undefined && before <= wanted && dayNumber(wanted) - dayNumber(before) <= RENEWED_DAYS;
  return serves ? before : wanted;
}

/**
 * The programs that a past should hold: what may be today's on the next mornings. The one of today, those that are due, those drilled lately.
 * @param input the rack, today's program, what the season has, the drills, and the day, ISO 8601
 * @returns eight at the most
 * @throws RangeError when there is no such day
 */
export function pastPrograms(input: {
  programs: readonly Program[];
  chosen: Program;
  season: Pick<SeasonToday, 'due' | 'season'>;
  drills: readonly DrillRecord[];
  today: string;
}): Program[] {
  const { programs, chosen, drills, today } = input;
  const { due, season } = input.season;
  const since = dayOfNumber(dayNumber(today) - RECENT_DAYS);
  const recent = drills.filter(({ date }) => date >= since);
  const drilled = new Set(recent.map(({ program, programId }) => programId ?? program));
  const found = [
    ...[chosen, ...duePrograms(due, programs)],
    ...season.tests.flatMap((test) => findProgram(test.program, programs) ?? []),
    ...programs.filter((program) => drilled.has(idOf(program))),
  ];
  return [...new Set(found)].slice(0, MOST_PROGRAMS);
}
