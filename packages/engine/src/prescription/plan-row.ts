import type { DrillRecord, RepRecord } from '../journal/drill-record.ts';
import { isoWeek } from '../units/calendar-day.ts';
import type { PrescribedBlock, Prescription } from './prescription.ts';
import type { Reason } from './reason.ts';

/** One drill of a planned day. Times are milliseconds, weights pounds-force. */
export type PlannedDrill = Pick<PrescribedBlock, 'block' | 'title' | 'sets' | 'reps' | 'holdMs' | 'addedWeightLbf'>;

/** One planned day: a row of the plan's table. */
export interface PlanRow {
  /** ISO 8601 week, '2026-W48'. */
  week: string;
  /** ISO 8601 day. */
  date: string;
  kind: 'usual' | 'deload' | 'taper' | 'competition' | 'test';
  /** The title of the program, where a season plans more than one. */
  program?: string;
  /** What a competition is called, where it has a name. */
  competition?: string;
  drills: readonly PlannedDrill[];
  /** Time at full draw, milliseconds. */
  heldMs: number;
  /** Length of the timeline, milliseconds. */
  durationMs: number;
  /** Where the numbers come from and what changed them; empty for a competition. */
  reasons: readonly Reason[];
}

/**
 * The row of a day that goes as prescribed.
 * @param prescription of that day
 * @returns its numbers and reasons
 */
export function rowOf({ date, blocks, durationMs, reasons }: Prescription): PlanRow {
  const drills = blocks.map(({ block, title, sets, reps, holdMs, addedWeightLbf }) => {
    return { block, title, sets, reps, holdMs, addedWeightLbf };
  });
  const rules = reasons.map(({ rule }) => rule);
  return {
    ...{ week: isoWeek(date), date, drills, durationMs },
    kind: rules.includes('taper')
      ? 'taper'
      : rules.includes('deload') || rules.includes('lighterWeek')
        ? 'deload'
        : 'usual',
    heldMs: drills.reduce((sum, { sets, reps, holdMs }) => sum + sets * reps * holdMs, 0),
    reasons: reasons.filter(({ rule }) => rule !== 'impossibleDate'),
  };
}

/**
 * The row of a competition.
 * @param date ISO 8601 day
 * @param competition what it is called
 * @returns a row without a drill
 */
export function competitionRow(date: string, competition?: string): PlanRow {
  return {
    ...{ week: isoWeek(date), date, kind: 'competition', drills: [], heldMs: 0, durationMs: 0, reasons: [] },
    ...(competition === undefined ? {} : { competition }),
  };
}

/**
 * What the journal would hold if the day went as planned.
 * @param prescription of the day
 * @param programId the program's id, where it has one
 * @param number of the planned drill, for its id
 * @returns a record with every rep held
 */
export function cleanRecord(prescription: Prescription, programId: string | undefined, number: number): DrillRecord {
  const { programTitle, date, blocks } = prescription;
  const reps = blocks.flatMap(({ block, sets, reps: count, holdMs }) =>
    Array.from({ length: sets * count }, (_, at): RepRecord => {
      const place = { block, set: Math.floor(at / count), rep: at % count, hand: 'usual' as const };
      return { ...place, prescribedMs: holdMs, heldMs: holdMs, outcome: 'held' };
    }),
  );
  const noon = `${date}T12:00:00Z`;
  return {
    ...{ id: `planned ${number}`, program: programTitle, programId, date, startedAt: noon, endedAt: noon },
    ...{ reps, prescribedReps: reps.length },
  };
}
