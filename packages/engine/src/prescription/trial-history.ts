import type { DrillRecord, Outcome } from '../journal/drill-record.ts';
import { type Program, programSchema } from '../program/program.ts';

/** The ladder of the trial program, as a file writes it. */
export const trialLadder = {
  rungs: [
    { raise: 'hold', by: 5, until: 45 },
    { raise: 'addedWeight', by: 2, until: 6, resets: { hold: 30 } },
  ],
};

/**
 * A program for tests: one block of 2 sets of 5 reps, 30 s each, 60 s between, 120 s between sets.
 * @param change keys of the block to set otherwise
 * @param more keys of the file to set otherwise
 * @returns a valid program called 'Weekday'
 */
export function trialProgram(change: object = {}, more: object = {}): Program {
  const block = {
    ...{ title: 'Holds', drill: 'holding', sets: 2, reps: 5, draw: 3, hold: 30, letDown: 3 },
    ...{ rest: { timesHold: 2 }, setRest: 120, ladder: trialLadder },
  };
  return programSchema.parse({
    ...{ format: 'larkhold/program', version: 1, title: 'Weekday', tool: 'bow' },
    blocks: [{ ...block, ...change }],
    ...more,
  });
}

/**
 * A session of ten reps of the trial program, held in full but for the outcomes given.
 * @param date ISO 8601 day
 * @param holdSeconds the hold prescribed
 * @param outcomes by index of the rep
 * @param more keys of the record to set otherwise
 * @returns a drill record
 */
export function trialRecord(
  date: string,
  holdSeconds: number,
  outcomes: Partial<Record<number, Outcome>> = {},
  more: Partial<DrillRecord> = {},
): DrillRecord {
  const prescribedMs = holdSeconds * 1000;
  const reps = Array.from({ length: 10 }, (_, index) => {
    const outcome = outcomes[index] ?? 'held';
    const heldMs = outcome === 'held' ? prescribedMs : 0;
    const place = { block: 0, set: Math.floor(index / 5), rep: index % 5, hand: 'usual' as const };
    return { ...place, prescribedMs, heldMs, outcome };
  });
  const startedAt = `${date}T06:30:00Z`;
  return {
    ...{ id: `${date}-${holdSeconds}`, program: 'Weekday', date, startedAt, endedAt: startedAt },
    ...{ prescribedReps: 10, reps, ...more },
  };
}

/** Two of ten reps missed: a fifth, which steps down. */
export const missedTwo = { 0: 'short', 1: 'skipped' } as const;
