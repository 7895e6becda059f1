import { expect, it } from 'vitest';
import { correctOutcome, settleSeen } from './correct-outcome.ts';
import { type DrillRecord, drillRecordSchema, type RepRecord } from './drill-record.ts';
import { disagreementMs, trueHeldMs, trueOutcome, wholeHeldMs } from './true-held-ms.ts';

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

it.each<[string, Partial<RepRecord>, number, string]>([
  ['let down 4 s early', { seen: { fromMs: 0, toMs: 26_000 } }, 26_000, 'short'],
  ['drawn 3 s late', { seen: { fromMs: 3_000, toMs: 30_400 } }, 27_400, 'unsure'],
  ['drawn and let down early, as long as asked', { seen: { fromMs: -1_200, toMs: 28_900 } }, 30_000, 'held'],
  ['as the clock has it, by less than half a second', { seen: { fromMs: 200, toMs: 29_800 } }, 29_600, 'held'],
  ['held on after the end', { seen: { fromMs: 0, toMs: 42_000 } }, 30_000, 'held'],
  [
    'skipped, whatever was seen',
    { outcome: 'skipped', heldMs: 2_000, seen: { fromMs: 0, toMs: 9_000 } },
    2_000,
    'skipped',
  ],
])('a rep that was seen %s counts for what was seen', (_name, seen, heldMs, outcome) => {
  expect(trueHeldMs({ ...rep, ...seen })).toBe(heldMs);
  expect(trueOutcome({ ...rep, ...seen })).toBe(outcome);
});

it('a hold stayed whole no longer than it was held', () => {
  expect(wholeHeldMs({ ...rep, seen: { fromMs: 0, toMs: 26_000, wholeMs: 40_000 } })).toBe(26_000);
  expect(wholeHeldMs({ ...rep, seen: { fromMs: 0, toMs: 26_000, wholeMs: 9_000 } })).toBe(9_000);
  expect(wholeHeldMs({ ...rep, seen: { fromMs: 0, toMs: 26_000 } })).toBeUndefined();
});

it.each<[string, Partial<RepRecord>, object]>([
  ['let down early', { seen: { fromMs: 0, toMs: 26_000, moved: [] } }, { outcome: 'short', heldMs: 26_000 }],
  ['drawn late', { seen: { fromMs: 3_000, toMs: 30_400 } }, { outcome: 'unsure', heldMs: 27_400 }],
  [
    'unsure',
    { outcome: 'unsure', heldMs: 12_000, seen: { fromMs: 0, toMs: 12_000 } },
    { outcome: 'unsure', heldMs: 12_000 },
  ],
  [
    'skipped',
    { outcome: 'skipped', heldMs: 2_000, seen: { fromMs: 0, toMs: 9_000 } },
    { outcome: 'skipped', heldMs: 2_000 },
  ],
  [
    'let down by a stray press',
    { outcome: 'short', heldMs: 9_000, why: 'tired', seen: { fromMs: 0, toMs: 30_200 } },
    { outcome: 'held', heldMs: 30_000 },
  ],
])('one press keeps what was seen or what the clock has: %s', (_name, seen, asSeen) => {
  const apart = { ...record, reps: [{ ...rep, ...seen }] };
  const kept = settleSeen(apart, 0, 'seen', at).reps[0];
  expect(kept).toMatchObject(asSeen);
  expect(kept?.why).toBeUndefined();
  expect(kept && disagreementMs(kept)).toBe(0);
  expect(kept?.seen).toEqual(seen.seen);
  const { seen: _, ...byClock } = { ...rep, ...seen };
  expect(settleSeen(apart, 0, 'clock', at).reps[0]).toEqual(byClock);
});

it('a hold that was let down early keeps its reason, as the camera has it', () => {
  const short = { ...rep, heldMs: 20_000, outcome: 'short', seen: { fromMs: 0, toMs: 24_000 } } as const;
  const settle = (why: RepRecord['why']) =>
    settleSeen({ ...record, reps: [{ ...short, ...(why && { why }) }] }, 0, 'seen', at).reps[0];
  expect(settle('form')).toEqual({ ...short, heldMs: 24_000, why: 'form' });
  expect(settle(undefined)).toEqual({ ...short, heldMs: 24_000 });
  expect(Object.keys(settle(undefined) ?? {})).not.toContain('why');
});

it('a rep that the camera never saw stays as the clock has it, and one that is not there is refused by its place', () => {
  expect(settleSeen(record, 1, 'seen', at).reps).toEqual(record.reps);
  expect(() => settleSeen(record, 2, 'seen', at)).toThrow('index: expected 0 to 1, got 2');
});
