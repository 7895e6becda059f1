import type { DrillRecord } from '../journal/drill-record.ts';
import { heldOf } from '../journal/held-of.ts';
import { isOfProgram } from '../journal/is-of-program.ts';
import { trueHeldMs } from '../journal/true-held-ms.ts';
import { dayNumber, dayOfNumber } from '../units/calendar-day.ts';
import type { ProgramRef, Season } from './season.ts';
import { writtenDay } from './season-day.ts';

/** Time at full draw, reps, and days with a drill. */
export interface Amount {
  seconds: number;
  reps: number;
  days: number;
}

/** One day of the comparison. */
export interface ComparedDay {
  /** ISO 8601. */
  date: string;
  planned: { programs: readonly string[]; seconds: number; reps: number };
  done: { programs: readonly string[]; seconds: number; reps: number };
}

/** What was planned in a span, and what was done of it. */
export interface PlannedAgainstDone {
  planned: Amount;
  done: Amount;
  /** Days that were planned and had a drill of a planned program. */
  keptDays: number;
  /** Days with something planned or done, in order. */
  days: readonly ComparedDay[];
}

/** What is compared. */
export interface PlannedAgainstDoneInput {
  season: Season;
  /** Any order; removed ones and those of other days are passed over. */
  records: readonly DrillRecord[];
  /** First and last day, ISO 8601, both included. */
  from: string;
  to: string;
  /** What a program asks on a day: seconds at full draw and reps. Undefined where nobody can say; such a session counts as a day, with no seconds. */
  doseOf: (program: ProgramRef, date: string) => { seconds: number; reps: number } | undefined;
}

/**
 * What a season had written for a span, beside what the journal holds. A written day counts even where it became a rest day: the coach should see that too.
 * @param input season, records, span, and what a program asks
 * @returns sums and days; seconds are at full draw, reps are those that were held or let down early
 * @throws RangeError when a day does not exist or the span ends before it begins
 */
export function plannedAgainstDone({ season, records, from, to, doseOf }: PlannedAgainstDoneInput): PlannedAgainstDone {
  const [first, last] = [dayNumber(from), dayNumber(to)];
  if (last < first) throw new RangeError(`to is '${to}'; expected a day from ${from} on`);
  const byDay = new Map<string, DrillRecord[]>();
  for (const record of records) {
    if (!record.removed) byDay.set(record.date, [...(byDay.get(record.date) ?? []), record]);
  }
  const days: ComparedDay[] = [];
  let keptDays = 0;
  for (let day = first; day <= last; day++) {
    const date = dayOfNumber(day);
    const { programs } = writtenDay(season, day);
    const drills = byDay.get(date) ?? [];
    if (programs.length === 0 && drills.length === 0) continue;
    days.push({ date, planned: plannedOn(programs, date, doseOf), done: doneOn(drills) });
    if (drills.some((drill) => programs.some((ref) => isOfProgram(drill, ref)))) keptDays++;
  }
  const sum = (side: 'planned' | 'done'): Amount => ({
    seconds: total(days.map((day) => day[side].seconds)),
    reps: total(days.map((day) => day[side].reps)),
    days: days.filter((day) => day[side].programs.length > 0).length,
  });
  return { planned: sum('planned'), done: sum('done'), keptDays, days };
}

function plannedOn(programs: readonly ProgramRef[], date: string, doseOf: PlannedAgainstDoneInput['doseOf']) {
  const doses = programs.map((ref) => doseOf(ref, date) ?? { seconds: 0, reps: 0 });
  return {
    programs: programs.map(({ title }) => title),
    seconds: total(doses.map(({ seconds }) => seconds)),
    reps: total(doses.map(({ reps }) => reps)),
  };
}

function doneOn(drills: readonly DrillRecord[]) {
  const reps = drills.flatMap((drill) => drill.reps).filter((rep) => trueHeldMs(rep) > 0);
  return {
    programs: drills.map(({ program }) => program),
    seconds: heldOf(reps).heldMs / 1000,
    reps: reps.length,
  };
}

function total(numbers: readonly number[]): number {
  return numbers.reduce((sum, number) => sum + number, 0);
}
