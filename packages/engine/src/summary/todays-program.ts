import type { Archer } from '../archer/archer.ts';
import type { Past } from '../archer/past.ts';
import type { DrillRecord } from '../journal/drill-record.ts';
import type { Journal } from '../journal/journal.ts';
import type { PrescribeInput } from '../prescription/prescribe.ts';
import type { Program } from '../program/program.ts';
import { idOf } from '../program/program-id.ts';
import { type Due, type RestReason, TEST_FREE_DAYS } from '../season/due-today.ts';
import { findProgram } from '../season/find-program.ts';
import type { Season } from '../season/season.ts';
import { lighterOn } from '../season/season-day.ts';
import { type SeasonToday, type SeasonTodayInput, seasonToday } from '../season/season-today.ts';
import { dayNumber } from '../units/calendar-day.ts';
import { chosenProgram } from './chosen-program.ts';

/** What today's program is made from. */
export interface TodaysProgramInput
  extends Pick<SeasonTodayInput, 'competitionDay' | 'usualMinutes' | 'usualDays' | 'today' | 'programs'> {
  journal: Journal;
  /** In place of the drills and entries before a day, what they fold into. */
  past?: Past;
  archer?: Archer;
  /** The program that the archer chose last, and the day for which it was chosen, ISO 8601. */
  takenId?: string;
  takenDay?: string;
}

/** Today's program, and the season that has it. */
export interface TodaysProgram {
  program: Program;
  season: SeasonToday;
}

/**
 * Today's program: the one that the archer took for today, else the next one that is due, else the one that the archer is on.
 * @param input journal, rack, day, and what the archer took
 * @returns the program, and what is due
 * @throws RangeError where the rack is empty or the day does not exist
 */
export function todaysProgram(input: TodaysProgramInput): TodaysProgram {
  const { journal, past, programs, today, archer, competitionDay, usualMinutes, usualDays } = input;
  const { season: stored, drills: records, days, weeks } = journal;
  const hasChosen =
    input.takenId !== undefined || past?.lastDrill !== undefined || records.some(({ kind }) => kind !== 'test');
  const on = onProgram(input);
  const season = seasonToday({
    ...{ records, days, past, weeks, today, programs, archer, competitionDay, usualMinutes, usualDays },
    ...(stored ? { stored } : {}),
    ...(hasChosen ? { chosen: on } : {}),
  });
  return { program: takenToday(input, season) ?? nextDue(input, season) ?? on, season };
}

/** The program that the archer took for this very day. One of those that are due gives way to the next when it is done. */
function takenToday({ journal, programs, takenId, takenDay, today }: TodaysProgramInput, { due }: SeasonToday) {
  if (takenDay !== today) return undefined;
  const taken = programs.find((program) => idOf(program) === takenId);
  const isPassed = taken && duePrograms(due, programs).includes(taken) && isDone(taken, journal.drills, today);
  return isPassed ? undefined : taken;
}

/** The next program that is due and not done; when all are done, the last one. */
function nextDue({ journal, programs, today }: TodaysProgramInput, { due }: SeasonToday): Program | undefined {
  const there = duePrograms(due, programs);
  return there.find((program) => !isDone(program, journal.drills, today)) ?? there.at(-1);
}

function onProgram({ journal, past, programs, takenId }: TodaysProgramInput): Program {
  // A test is done when it is due: having taken one makes it nobody's daily drill.
  const taken = programs.find((program) => idOf(program) === takenId);
  const chosen = chosenProgram(programs, taken?.kind === 'test' ? undefined : takenId, journal.drills, past);
  if (!chosen) throw new RangeError('programs is empty; expected at least one program');
  return chosen;
}

/**
 * The programs of the rack that are due.
 * @param due as `seasonToday` gives it
 * @param programs of the rack
 * @returns in their order
 */
export function duePrograms(due: readonly Due[], programs: readonly Program[]): Program[] {
  return due.flatMap((one) => (one.kind === 'rest' ? [] : (findProgram(one.program, programs) ?? [])));
}

/**
 * Whether a program was drilled on a day.
 * @param program any
 * @param drills of the journal
 * @param day ISO 8601
 * @returns true where a drill of it has ended with a rep
 */
export function isDone(program: Program, drills: readonly DrillRecord[], day: string): boolean {
  return drills.some(
    ({ date, open, reps, programId, program: title }) =>
      date === day && !open && reps.length > 0 && (programId ?? title) === idOf(program),
  );
}

/**
 * Why the season has rest today, unless the archer took a program for today all the same.
 * @param season what is due
 * @param takenDay the day for which the archer took a program, ISO 8601
 * @param today ISO 8601; nothing is known of another day than that of `season`
 * @returns the reason; undefined where a drill is due
 */
export function restToday(
  { date, due }: Pick<SeasonToday, 'date' | 'due'>,
  takenDay: string | undefined,
  today: string,
): RestReason | undefined {
  const [first] = due;
  return date === today && first?.kind === 'rest' && takenDay !== today ? first.because : undefined;
}

/**
 * What a season changes in a prescription of a day: lighter weeks, competitions that are near, and rest.
 * @param season the season in force, and what is due
 * @param program that is prescribed
 * @param today ISO 8601
 * @param takenDay the day for which the archer took a program, ISO 8601
 * @returns the part of a prescription's input that it decides
 * @throws RangeError when there is no such day
 */
export function seasonEffects(
  season: Pick<SeasonToday, 'date' | 'season' | 'due'>,
  program: Program,
  today: string,
  takenDay?: string,
): Pick<PrescribeInput, 'lighter' | 'competitionDay' | 'seasonRest'> {
  return {
    lighter: lighterOn(season.season, dayNumber(today)),
    competitionDay: competitionNear(season.season, today, program),
    seasonRest: restToday(season, takenDay, today),
  };
}

/** The day of a competition for which today is better without a drill, or without a test: on all of its days, and on the days before. */
function competitionNear({ competitions }: Season, today: string, { kind }: Program): string | undefined {
  const now = dayNumber(today);
  const before = kind === 'test' ? TEST_FREE_DAYS : 1;
  const near = competitions.find(
    ({ day, lastDay = day }) => dayNumber(day) - before <= now && now <= dayNumber(lastDay),
  );
  return near && (near.day <= today ? today : near.day);
}
