import { findProgram, type RestReason, restToday, todaysProgram } from '@larkhold/engine';
import { archerOf } from '@larkhold/store';
import type { AppView } from './app-context.ts';

/** What today's program is made from. */
type Known = Pick<AppView, 'journal' | 'past' | 'programs' | 'kit' | 'today'>;
/** Today's program, and the season that has it. */
type Todays = Pick<AppView, 'chosen' | 'season'>;

const kept = new WeakMap<AppView['journal'], { key: string; programs: Known['programs']; todays: Todays }>();

/**
 * Today's program and what is due, worked out once for a journal, a kit, a rack and a day.
 * @param known the app as it is
 * @returns the same answer for the same ones
 * @throws RangeError where the rack is empty
 */
export function chosenToday({ journal, past, programs, kit, today }: Known): Todays {
  const archer = archerOf(kit);
  const { plan, programId: takenId, programDay: takenDay } = kit;
  const key = JSON.stringify([today, archer, plan, takenId, takenDay]);
  const found = kept.get(journal);
  if (found?.key === key && isSameRack(found.programs, programs)) return found.todays;
  const { competitionDay, usualMinutes, daysPerWeek: usualDays } = plan ?? {};
  const said = { takenId, takenDay, competitionDay, usualMinutes, usualDays };
  const { program: chosen, season } = todaysProgram({ journal, past, programs, today, archer, ...said });
  kept.set(journal, { key, programs, todays: { chosen, season } });
  return { chosen, season };
}

/**
 * Why the season has rest today, unless the archer took a program for today all the same.
 * @param view the app as it is
 * @returns the reason; undefined where a drill is due
 */
export function seasonRest({ season, kit, today }: Pick<AppView, 'season' | 'kit' | 'today'>): RestReason | undefined {
  return restToday(season, kit.programDay, today);
}

/**
 * The minutes that a coach gave the program of today.
 * @param view the app as it is
 * @returns whole minutes; undefined where nobody said
 */
export function dueMinutes({ season, chosen }: Pick<AppView, 'season' | 'chosen'>): number | undefined {
  const due = season.due.find((one) => one.kind === 'program' && findProgram(one.program, [chosen]) !== undefined);
  return due?.kind === 'program' ? due.minutes : undefined;
}

function isSameRack(one: readonly unknown[], other: readonly unknown[]): boolean {
  return one.length === other.length && one.every((program, at) => program === other[at]);
}
