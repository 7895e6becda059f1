import fc from 'fast-check';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { copyReps } from './copy-reps.ts';
import { drillRecordSchema, repRecordSchema } from './drill-record.ts';

const schema = z.array(repRecordSchema).max(20_000);
const good = {
  ...{ block: 0, set: 1, rep: 2, hand: 'usual', prescribedMs: 30_000, heldMs: 21_400, outcome: 'short' },
} as const;
const record = {
  ...{ id: 'a', program: 'Slow mornings', date: '2026-03-02' },
  ...{ startedAt: '2026-03-02T06:30:00Z', endedAt: '2026-03-02T06:40:00Z' },
};

const values = fc.oneof(
  fc.constantFrom('usual', 'opposite', 'held', 'short', 'skipped', 'unsure', 'loose', '', null, undefined, true),
  fc.nat(),
  fc.constantFrom(-1, -0, 0.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 53, 2 ** 53 - 1),
  fc.constant([]),
  fc.constant({}),
);
const keys = fc.constantFrom(...Object.keys(good), 'note', '__proto__', 'toString', 'constructor');
/** Reps with a key changed, added or removed, or something that is no rep. */
const reps = fc.oneof(
  fc.constant(good),
  fc.record({
    ...{ block: fc.nat(), set: fc.nat(), rep: fc.nat(), prescribedMs: fc.nat(), heldMs: fc.nat() },
    hand: fc.constantFrom('usual', 'opposite'),
    outcome: fc.constantFrom('held', 'short', 'skipped', 'unsure'),
  }),
  fc.tuple(keys, values).map(([key, value]) => Object.defineProperty({ ...good }, key, { value, enumerable: true })),
  keys.map((gone) => Object.fromEntries(Object.entries(good).filter(([key]) => key !== gone))),
  fc.tuple(keys, keys, values).map(([gone, key, value]) => ({
    ...Object.fromEntries(Object.entries(good).filter(([one]) => one !== gone)),
    [key]: value,
  })),
  values,
);

test('what is copied is what the schema takes, and what it gives', () => {
  fc.assert(
    fc.property(fc.oneof(fc.array(reps, { maxLength: 4 }), values), (found) => {
      const read = schema.safeParse(found);
      const copied = copyReps(found);
      if (copied) expect(read).toEqual({ success: true, data: copied });
      // A rep of a newer app has more keys: the schema keeps them.
      else expect(read.success && [found].flat().every((rep) => Object.keys(Object(rep)).length === 7)).toBe(false);
    }),
    { numRuns: 2000 },
  );
});

test('in a record, what only a newer app knows of a rep is kept', () => {
  const newer = [good, { ...good, seenMs: 21_350 }];
  expect(drillRecordSchema.parse({ ...record, reps: newer }).reps).toEqual(newer);
});

test('a copy, so that what was given may be changed afterwards', () => {
  const given = [{ ...good }];
  const copied = copyReps(given);
  expect(copied).toEqual(given);
  expect(copied).not.toBe(given);
  expect(copied?.[0]).not.toBe(given[0]);
});

test('a list that is too long is left to the schema', () => {
  expect(copyReps(Array(20_000).fill(good))).toHaveLength(20_000);
  expect(copyReps(Array(20_001).fill(good))).toBeUndefined();
});

test.each([
  ['a wrong value', [good, { ...good, heldMs: '30' }], ['reps', 1, 'heldMs'], 'invalid_type'],
  ['no list', undefined, ['reps'], 'invalid_type'],
  ['too many', Array(20_001).fill(good), ['reps'], 'too_big'],
])('in a record, the schema tells of %s, and where', (_name, found, path, code) => {
  const read = drillRecordSchema.safeParse({ ...record, reps: found });
  const whole = z.object({ reps: schema }).safeParse({ reps: found });
  expect(read.error?.issues).toMatchObject([{ path, code }]);
  expect(read.error?.issues[0]?.message).toBe(whole.error?.issues[0]?.message);
});
