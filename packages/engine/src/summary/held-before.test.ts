import { describe, expect, it } from 'vitest';
import type { DrillRecord, RepRecord } from '../journal/drill-record.ts';
import type { PrescribedBlock } from '../prescription/prescription.ts';
import { trialProgram } from '../prescription/trial-history.ts';
import { heldBefore } from './held-before.ts';

const program = trialProgram({ rest: { seconds: 90 } }, { id: 'b54f3c0e-5a77-4a0e-9a4f-0d6f2a3c9d11' });
const { id: programId, title } = program;

function record(
  date: string,
  sets: number,
  reps: number,
  change: Partial<RepRecord> = {},
  more: Partial<DrillRecord> = {},
) {
  const done = Array.from({ length: sets * reps }, (_, at): RepRecord => {
    const place = { block: 0, set: Math.floor(at / reps), rep: at % reps, hand: 'usual' as const };
    return { ...place, prescribedMs: 40_000, heldMs: 40_000, outcome: 'held', addedWeightLbf: 4, ...change };
  });
  const at = `${date}T06:30:00Z`;
  return {
    ...{ id: date, program: title, programId, date, startedAt: at, endedAt: at },
    ...{ reps: done, ...more },
  } satisfies DrillRecord;
}

const asked = (change: Partial<PrescribedBlock> = {}) => ({
  date: '2026-11-25',
  tool: 'bow' as const,
  blocks: [
    {
      ...{ block: 0, title: 'Holds', drill: 'holding' as const, sets: 2, reps: 4, drawMs: 3000, holdMs: 40_000 },
      ...{ letDownMs: 3000, restMs: 90_000, setRestMs: 120_000, letDownTo: 'rest' as const, hand: 'usual' as const },
      ...{ addedWeightLbf: 4, ...change },
    },
  ],
});

const found = (records: DrillRecord[], change: Partial<PrescribedBlock> = {}, onFingersLbf?: number) =>
  heldBefore(asked(change), { program, records, onFingersLbf })?.id;

describe('what was held before', () => {
  it('is the last drill in which as much was held, or more', () => {
    const records = [record('2026-11-20', 2, 4), record('2026-11-23', 2, 5), record('2026-11-21', 2, 4)];
    expect(found(records)).toBe('2026-11-23');
    expect(found(records, { reps: 5 })).toBe('2026-11-23');
    expect(found(records, { holdMs: 35_000, addedWeightLbf: 2 })).toBe('2026-11-23');
  });

  it.each<[string, Partial<PrescribedBlock>]>([
    ['a longer hold', { holdMs: 40_500 }],
    ['one rep more', { reps: 5 }],
    ['one set more', { sets: 3 }],
    ['more weight', { addedWeightLbf: 4.5 }],
    ['both hands', { hand: 'both' }],
    ['another block', { block: 1 }],
  ])('is undefined where today has %s', (_what, change) => {
    expect(found([record('2026-11-23', 2, 4)], change)).toBeUndefined();
  });

  it.each<[string, DrillRecord]>([
    ['was painful', record('2026-11-23', 2, 4, {}, { pain: true })],
    ['was removed', record('2026-11-23', 2, 4, {}, { removed: true })],
    ['runs still', record('2026-11-23', 2, 4, {}, { open: true })],
    ['was of a band', record('2026-11-23', 2, 4, {}, { tool: 'band' })],
    ['was of another program', record('2026-11-23', 2, 4, {}, { programId: 'other' })],
    ['was let down early', record('2026-11-23', 2, 4, { outcome: 'short' })],
    ['was seen to end early', record('2026-11-23', 2, 4, { seen: { fromMs: 0, toMs: 38_000 } })],
    ['is 56 days old', record('2026-09-30', 2, 4)],
    ['is of tomorrow', record('2026-11-26', 2, 4)],
  ])('is not a drill that %s', (_what, one) => {
    expect(found([one])).toBeUndefined();
  });

  it('is not a drill with a lighter bow, or of which nobody knows', () => {
    const heavy = record('2026-11-20', 2, 4, {}, { onFingersLbf: 40 }); // 36 and 4 added
    expect(found([heavy], {}, 36)).toBe('2026-11-20');
    expect(found([heavy], {}, 36.5)).toBeUndefined();
    expect(found([record('2026-11-23', 2, 4)], {}, 36)).toBeUndefined();
  });

  it('is no drill of a longer hold where a rest goes with its hold', () => {
    const records = [record('2026-11-23', 2, 4)];
    const timed = trialProgram({}, { id: programId });
    expect(heldBefore(asked(), { program: timed, records })?.id).toBe('2026-11-23');
    expect(heldBefore(asked({ holdMs: 35_000 }), { program: timed, records })).toBeUndefined();
  });

  it('is still of 55 days ago, and of today', () => {
    expect(found([record('2026-10-01', 2, 4)])).toBe('2026-10-01');
    expect(found([record('2026-11-25', 2, 4)])).toBe('2026-11-25');
  });
});
