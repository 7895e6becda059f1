import { compareJournals, createJournal, type DrillRecord, type Journal } from '@larkhold/engine';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { compareInTurns } from './compare-in-turns.ts';

const id = fc.constantFrom(...[...Array(12).keys()].map((at) => `drill-${at}`));
const editedAt = fc.constantFrom('2026-05-01T10:00:00Z', '2026-05-02T10:00:00Z', '2026-05-03T10:00:00Z');
const drill = fc.tuple(id, editedAt, fc.nat(2)).map(
  ([one, at, effort]): DrillRecord => ({
    ...{ id: one, program: 'Attic holds', date: '2026-05-01', editedAt: at, effort, reps: [] },
    ...{ startedAt: '2026-05-01T06:00:00Z', endedAt: '2026-05-01T06:10:00Z' },
  }),
);
const mark = fc
  .tuple(id, editedAt, fc.boolean())
  .map(([key, at, isDrill]) => ({ of: isDrill ? 'drills' : 'days', key: isDrill ? key : '2026-05-04', at }));
const day = fc.tuple(fc.constantFrom('2026-05-04', '2026-05-05'), editedAt, fc.boolean());
const journal: fc.Arbitrary<Journal> = fc
  .record({
    drills: fc.array(drill, { maxLength: 14 }),
    days: fc.uniqueArray(day, { maxLength: 2, selector: ([date]) => date }),
    removed: fc.uniqueArray(mark, { maxLength: 4, selector: ({ of, key }) => `${of} ${key}` }),
  })
  .map(({ drills, days, removed }) => ({
    ...{ ...createJournal(), drills, removed },
    days: days.map(([date, at, pain]) => ({ date, editedAt: at, pain })),
  }));

it('in however many parts, the comparison is the one of all at once', async () => {
  await fc.assert(
    fc.asyncProperty(journal, journal, fc.integer({ min: 1, max: 9 }), async (ours, incoming, atOnce) => {
      const whole = compareJournals(ours, incoming);
      const parted = await compareInTurns(ours, incoming, atOnce);
      for (const { drills } of [whole, parted]) for (const keys of Object.values(drills)) keys.sort();
      expect(parted).toEqual(whole);
    }),
    { seed: 812, numRuns: 300 },
  );
});
