import fc from 'fast-check';
import { expect, test } from 'vitest';
import { copyDrill } from './copy-drill.ts';
import { drillRecordSchema } from './drill-record.ts';

const rep = {
  ...{ block: 0, set: 1, rep: 2, hand: 'usual', prescribedMs: 30_000, heldMs: 21_400, outcome: 'short' },
} as const;
const needed = {
  ...{ id: '0b6f-1', program: 'Slow mornings', date: '2026-03-02', reps: [rep] },
  ...{ startedAt: '2026-03-02T06:30:00+01:00', endedAt: '2026-03-02T05:40:00.250Z' },
};
const whole = {
  ...{ ...needed, programId: 'x', effort: 7.5, pain: false, kind: 'test', note: 'Calm.', prescribedReps: 10 },
  ...{ durationMs: 600_000, onFingersLbf: 38, tool: 'bow', open: true, editedAt: '2026-03-02T06:41:00.000Z~a1' },
};

const values = fc.oneof(
  fc.constantFrom('', 'bow', 'test', 'x'.repeat(65), 'x'.repeat(121), '\ud83d', '🏹', '2026-02-30', '1899-12-31'),
  fc.constantFrom('2026-11-25T06:30:00Z', '3000-01-01T00:00:00Z', '2026-11-25T06:30', '2026-11-25T06:30:00Z~A'),
  fc.constantFrom('2026-11-25T06:30:00Z~b2', '2026-11-25T06:30Z', '2026-13-01T06:30:00Z', '2026-11-25T06:30:00.1234Z'),
  fc.constantFrom(-1, -0, 0, 0.5, 10, 10.5, 200, 201, 2 ** 53, Number.NaN, Number.POSITIVE_INFINITY),
  fc.constantFrom(true, false, null, undefined, [], {}, [rep, rep], [{ ...rep, heldMs: -1 }], [{ ...rep, newer: 1 }]),
  fc.string(),
);
const keys = fc.constantFrom(...Object.keys(whole), 'removed', 'edits', 'restoredAt', 'newer', '__proto__', 'toString');
/** Good records with some keys changed, added or removed. */
const anyRecord = fc
  .tuple(
    fc.constantFrom(needed, whole),
    fc.array(fc.tuple(keys, values), { maxLength: 3 }),
    fc.array(keys, { maxLength: 2 }),
  )
  .map(([record, changes, gone]) => {
    const row: object = Object.fromEntries(Object.entries(record).filter(([key]) => !gone.includes(key)));
    for (const [key, value] of changes) Object.defineProperty(row, key, { value, enumerable: true, writable: true });
    return row;
  });

test('what is copied is what the schema takes, and what it gives', () => {
  let copiedCount = 0;
  fc.assert(
    fc.property(fc.oneof(anyRecord, values), (found) => {
      const copied = copyDrill(found);
      if (copied === undefined) return;
      copiedCount += 1;
      expect(drillRecordSchema.safeParse(found)).toEqual({ success: true, data: copied });
    }),
    { seed: 321, numRuns: 4000 },
  );
  expect(copiedCount).toBeGreaterThan(500);
});

test('what the app itself writes needs no schema', () => {
  expect(copyDrill(needed)).toEqual(needed);
  expect(copyDrill(whole)).toEqual(whole);
});

test('what only a newer app knows is left to the schema, which keeps it', () => {
  expect(copyDrill({ ...whole, newer: 1 })).toBeUndefined();
  expect(copyDrill({ ...whole, removed: true })).toBeUndefined();
});

test('a copy, so that what was given may be changed afterwards', () => {
  const copied = copyDrill(whole);
  expect(copied).not.toBe(whole);
  expect(copied?.reps).not.toBe(whole.reps);
});
