import type { DrillRecord } from '../journal/drill-record.ts';
import { prescribe } from '../prescription/prescribe.ts';
import type { PrescribedBlock } from '../prescription/prescription.ts';
import type { Program } from '../program/program.ts';
import { layOut } from '../timeline/lay-out.ts';
import { dayNumber, dayOfNumber } from '../units/calendar-day.ts';

/** One week of a program in which every session was clean. */
export interface WeekAhead {
  /** 1 is this one. */
  week: number;
  /** The numbers of the week's last session. */
  blocks: readonly PrescribedBlock[];
  /** Milliseconds at full draw over the whole week. */
  tensionMs: number;
  /** True in a lighter week. */
  isDeload: boolean;
  /** What held the numbers back, if anything did: plain sentences. */
  limits: readonly string[];
}

/** Days of the week to drill on, by how many there are: as evenly as a week allows. */
const drillDays: Readonly<Record<number, readonly number[]>> = {
  1: [0],
  2: [0, 3],
  3: [0, 2, 4],
  4: [0, 1, 3, 5],
  5: [0, 1, 2, 3, 4],
  6: [0, 1, 2, 3, 4, 5],
  7: [0, 1, 2, 3, 4, 5, 6],
};

/**
 * Walks a program through the weeks ahead, every session done in full. It asks the same `prescribe` that the archer will be asked by, so
 * lighter weeks and growth limits are in it.
 * @param program a valid program
 * @param plan a Monday, ISO 8601; sessions a week, 1 to 7; weeks to look ahead
 * @returns one entry a week
 * @throws RangeError when there are no such sessions a week
 */
export function weeksAhead(
  program: Program,
  plan: { monday: string; sessionsPerWeek: number; weeks?: number },
): WeekAhead[] {
  const { monday, sessionsPerWeek, weeks = 8 } = plan;
  const days = drillDays[sessionsPerWeek];
  if (!days) throw new RangeError(`sessionsPerWeek is ${sessionsPerWeek}; expected a whole number, 1 to 7`);
  const records: DrillRecord[] = [];
  return Array.from({ length: weeks }, (_, index) => {
    let tensionMs = 0;
    let last: ReturnType<typeof prescribe> | undefined;
    for (const day of days) {
      const date = dayOfNumber(dayNumber(monday) + index * 7 + day);
      last = prescribe({ program, records, today: date });
      const record = cleanRecord(program, last, date);
      tensionMs += record.reps.reduce((sum, { heldMs }) => sum + heldMs, 0);
      records.push(record);
    }
    const reasons = last?.reasons ?? [];
    return {
      week: index + 1,
      blocks: last?.blocks ?? [],
      tensionMs,
      isDeload: reasons.some(({ rule }) => rule === 'deload'),
      limits: reasons.filter(({ rule }) => rule === 'weeklyGrowth').map(({ change }) => change),
    };
  });
}

function cleanRecord(program: Program, prescription: ReturnType<typeof prescribe>, date: string): DrillRecord {
  const holds = layOut(prescription).steps.filter(({ kind }) => kind === 'hold');
  const at = `${date}T07:00:00Z`;
  return {
    ...{ id: `ahead-${date}`, program: program.title, programId: program.id, date, startedAt: at, endedAt: at },
    prescribedReps: holds.length,
    reps: holds.map(({ block, set, rep, hand, durationMs }) => {
      return { block, set, rep, hand, prescribedMs: durationMs, heldMs: durationMs, outcome: 'held' };
    }),
  };
}
