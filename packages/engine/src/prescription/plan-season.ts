import type { Program } from '../program/program.ts';
import { dueToday } from '../season/due-today.ts';
import { findProgram } from '../season/find-program.ts';
import { knowForSeason } from '../season/know-for-season.ts';
import type { Season } from '../season/season.ts';
import { dayNumber, dayOfNumber, mondayNumber } from '../units/calendar-day.ts';
import { cleanRecord, competitionRow, type PlanRow, rowOf } from './plan-row.ts';
import { type PrescribeInput, prescribe } from './prescribe.ts';

/** What a season's plan is made from. */
export interface SeasonPlanInput extends Pick<PrescribeInput, 'records' | 'days' | 'today' | 'archer'> {
  season: Season;
  /** The archer's programs; what the season names and nobody has is left out. */
  programs: readonly Program[];
  /** Whole ISO weeks, this one the first, 1 to 52. */
  weeks: number;
}

/**
 * The coming weeks of a season, as if every session went clean. Each day is what `dueToday` would say on it, after the days before.
 * @param input season, programs, records, the first day, how many weeks
 * @returns a row per planned drill in order, and one per competition
 * @throws TypeError when a program is not valid; RangeError when the day is not
 */
export function planSeason({ season, programs, weeks, days, archer, ...input }: SeasonPlanInput): PlanRow[] {
  const first = dayNumber(input.today);
  const end = mondayNumber(first) + 7 * weeks;
  const records = input.records.filter(({ date }) => date <= input.today);
  const rows: PlanRow[] = [];
  for (let day = first; day < end; day++) {
    const today = dayOfNumber(day);
    rows.push(
      ...season.competitions.filter((one) => one.day === today).map(({ title }) => competitionRow(today, title)),
    );
    const known = knowForSeason({ records, days, today, archer });
    for (const due of dueToday(season, known, today, (ref) => findProgram(ref, programs) !== undefined)) {
      if (due.kind === 'rest') continue;
      const program = findProgram(due.program, programs)!;
      const { lighter, minutes } = due.kind === 'program' ? due : {};
      const prescription = prescribe({ program, records, days, archer, today, lighter, minutes });
      if (prescription.rest || prescription.blocks.length === 0) continue;
      const row = { ...rowOf(prescription), program: program.title };
      rows.push(due.kind === 'test' ? { ...row, kind: 'test' } : row);
      const record = cleanRecord(prescription, program.id, rows.length);
      // What a test will give is not known, and must not lift what comes after it: it counts as drawn, for one second.
      if (due.kind === 'test') {
        records.push({
          ...record,
          kind: 'test',
          reps: record.reps.slice(0, 1).map((rep) => ({ ...rep, heldMs: 1000, outcome: 'unsure' })),
        });
      } else records.push(record);
    }
  }
  return rows;
}
