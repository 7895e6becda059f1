import { expect, test } from 'vitest';
import { correctOutcome } from './correct-outcome.ts';
import { correctWhy } from './correct-why.ts';
import type { DrillRecord } from './drill-record.ts';

const rep = { block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: 30_000 } as const;
const record: DrillRecord = {
  ...{ id: 'a', program: 'Mornings', date: '2026-11-25', startedAt: '2026-11-25T06:30:00Z' },
  endedAt: '2026-11-25T06:40:00Z',
  reps: [
    { ...rep, heldMs: 30_000, outcome: 'held' },
    { ...rep, rep: 1, heldMs: 21_000, outcome: 'short' },
  ],
};
const at = '2026-11-25T07:00:00Z';

test('says why a hold was short, and takes it back', () => {
  const told = correctWhy(record, 1, 'form', at);
  expect(told.reps[1]).toEqual({ ...record.reps[1], why: 'form' });
  expect(told.editedAt).toBe(at);
  expect(correctWhy(told, 1, undefined, at).reps).toEqual(record.reps);
  expect(Object.keys(correctWhy(told, 1, undefined, at).reps[1] ?? {})).not.toContain('why');
  expect(record.reps[1]).not.toHaveProperty('why');
});

test('a rep that was held has no reason, nor has one that is corrected', () => {
  expect(() => correctWhy(record, 0, 'tired', at)).toThrow(
    'index is 0, which is held; expected a rep that was let down early',
  );
  expect(() => correctWhy(record, 2, 'tired', at)).toThrow('index is 2 of 2; expected a rep that was let down early');
  expect(correctOutcome(correctWhy(record, 1, 'tired', at), 1, 'held', at).reps[1]).not.toHaveProperty('why');
});
