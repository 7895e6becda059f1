import { expect, it } from 'vitest';
import { correctOutcome } from './correct-outcome.ts';
import { type DrillRecord, drillRecordSchema, type RepRecord } from './drill-record.ts';

const rep: RepRecord = {
  block: 0,
  set: 0,
  rep: 0,
  hand: 'usual',
  prescribedMs: 30_000,
  heldMs: 30_000,
  outcome: 'held',
};
const record: DrillRecord = {
  id: 'a',
  program: 'Slow mornings',
  date: '2026-04-01',
  startedAt: '2026-04-01T06:00:00Z',
  endedAt: '2026-04-01T06:20:00Z',
  reps: [rep, { ...rep, rep: 1, heldMs: 12_000, outcome: 'unsure' }],
};
const at = '2026-04-01T06:21:00Z';

it.each([
  [1, 'held', 30_000],
  [1, 'short', 12_000],
  [1, 'skipped', 0],
  [0, 'short', 29_900],
  [0, 'unsure', 30_000],
] as const)('rep %i corrected to %s counts %i ms at full draw', (index, outcome, heldMs) => {
  const corrected = correctOutcome(record, index, outcome, at);
  expect(corrected.reps[index]).toMatchObject({ outcome, heldMs, prescribedMs: 30_000 });
  expect(corrected.reps[1 - index]).toBe(record.reps[1 - index]);
  expect(corrected.editedAt).toBe(at);
  expect(drillRecordSchema.safeParse(corrected).success).toBe(true);
  expect(record.reps[index]).toBe(index === 0 ? rep : record.reps[1]);
});

it('refuses a rep that is not there', () => {
  expect(() => correctOutcome(record, 2, 'held', at)).toThrow(RangeError);
  expect(() => correctOutcome(record, -1, 'held', at)).toThrow(RangeError);
});
