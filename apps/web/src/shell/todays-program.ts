import {
  chosenProgram,
  type DrillRecord,
  type Due,
  findProgram,
  idOf,
  type Program,
  type RestReason,
  type SeasonToday,
  seasonToday,
} from '@larkhold/engine';
import { archerOf } from '@larkhold/store';
import type { AppView } from './app-context.ts';

/** What today's program is made from. */
type Known = Pick<AppView, 'journal' | 'programs' | 'kit' | 'today'>;
/** Today's program, and the season that has it. */
type Todays = Pick<AppView, 'chosen' | 'season'>;

const kept = new WeakMap<AppView['journal'], { key: string; programs: Known['programs']; todays: Todays }>();

/**
 * Today's program: the one that the archer took for today, else the next one that is due, else the one that the archer is on.
 * @param known journal, rack, kit and day; the same ones give the same answer
 * @returns the program, and what is due
 * @throws RangeError where the rack is empty
 */
export function todaysProgram(known: Known): Todays {
  const { journal, programs, kit, today } = known;
  const key = JSON.stringify([today, archerOf(kit), kit.plan, kit.programId, kit.programDay]);
  const found = kept.get(journal);
  if (found?.key === key && isSameRack(found.programs, programs)) return found.todays;
  const season = seasonOf(known);
  const todays = { season, chosen: takenToday(known, season) ?? nextDue(known, season) ?? onProgram(known) };
  kept.set(journal, { key, programs, todays });
  return todays;
}

function seasonOf({ journal, programs, kit, today }: Known): SeasonToday {
  const { season: stored, drills: records, days, weeks } = journal;
  const hasChosen = kit.programId !== undefined || records.some(({ kind }) => kind !== 'test');
  const chosen = hasChosen ? onProgram({ journal, programs, kit, today }) : undefined;
  return seasonToday({
    ...{ records, days, weeks, today, programs, archer: archerOf(kit), competitionDay: kit.plan?.competitionDay },
    ...{ usualMinutes: kit.plan?.usualMinutes, usualDays: kit.plan?.daysPerWeek },
    ...(stored ? { stored } : {}),
    ...(chosen ? { chosen } : {}),
  });
}

/** The program that the archer took for this very day. One of those that are due gives way to the next when it is done. */
function takenToday({ journal, programs, kit, today }: Known, { due }: SeasonToday): Program | undefined {
  if (kit.programDay !== today) return undefined;
  const taken = programs.find((program) => idOf(program) === kit.programId);
  const isPassed = taken && duePrograms(due, programs).includes(taken) && isDone(taken, journal.drills, today);
  return isPassed ? undefined : taken;
}

/**
 * Why the season has rest today, unless the archer took a program for today all the same. What `prescribe` itself says of rest goes before it.
 * @param view the app as it stands
 * @returns the reason; undefined where a drill is due
 */
export function seasonRest({ season, kit, today }: Pick<AppView, 'season' | 'kit' | 'today'>): RestReason | undefined {
  const [first] = season.due;
  return first?.kind === 'rest' && kit.programDay !== today ? first.because : undefined;
}

/** The next program that is due and not done; when all are done, the last one. */
function nextDue({ journal, programs, today }: Known, { due }: SeasonToday): Program | undefined {
  const there = duePrograms(due, programs);
  return there.find((program) => !isDone(program, journal.drills, today)) ?? there.at(-1);
}

function onProgram({ journal, programs, kit }: Known): Program {
  // A test is done when it is due: having taken one makes it nobody's daily drill.
  const taken = programs.find((program) => idOf(program) === kit.programId);
  const chosen = chosenProgram(programs, taken?.kind === 'test' ? undefined : kit.programId, journal.drills);
  if (!chosen) throw new RangeError('builtInPrograms is empty; expected at least one program');
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

function isSameRack(one: readonly Program[], other: readonly Program[]): boolean {
  return one.length === other.length && one.every((program, at) => program === other[at]);
}
