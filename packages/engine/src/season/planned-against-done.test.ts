import { expect, it } from 'vitest';
import type { DrillRecord } from '../journal/drill-record.ts';
import { builtInPrograms } from '../program/built-in-programs.ts';
import { findProgram } from './find-program.ts';
import { plannedAgainstDone } from './planned-against-done.ts';
import { type ProgramRef, seasonSchema } from './season.ts';

const holding = { title: 'One set of ten' };
const season = seasonSchema.parse({
  ...{ format: 'larkhold/season', version: 1, title: 'Winter' },
  blocks: [
    {
      title: 'Base',
      from: '2026-11-02',
      weeks: 4,
      days: { monday: [holding], thursday: [holding, { title: 'Nobody has this' }] },
    },
  ],
});
/** The program as its file begins: 10 reps of 30 s are 300 s, by hand. */
const doseOf = (ref: ProgramRef) => {
  const block = findProgram(ref, builtInPrograms)?.blocks[0];
  return block && { seconds: block.sets * block.reps * block.hold, reps: block.sets * block.reps };
};
const drill = (
  date: string,
  program: string,
  heldMs: readonly number[],
  more: Partial<DrillRecord> = {},
): DrillRecord => ({
  ...{ id: `${date} ${program}`, program, date, startedAt: `${date}T07:00:00Z`, endedAt: `${date}T07:20:00Z` },
  reps: heldMs.map((held, rep) => ({
    ...{ block: 0, set: 0, rep, hand: 'usual', prescribedMs: 30_000, heldMs: held },
    outcome: held === 0 ? 'skipped' : held < 30_000 ? 'short' : 'held',
  })),
  ...more,
});

it('sets what was written beside what was done, in seconds, reps and days', () => {
  const records = [
    drill('2026-11-02', 'One set of ten', [30_000, 30_000, 12_500, 0]),
    drill('2026-11-03', 'Power', [3000]),
    drill('2026-11-05', 'One set of ten', [30_000], { removed: true }),
    drill('2026-11-20', 'One set of ten', [30_000]),
  ];
  const compared = plannedAgainstDone({ season, records, from: '2026-11-02', to: '2026-11-08', doseOf });
  expect(compared.planned).toEqual({ seconds: 600, reps: 20, days: 2 });
  expect(compared.done).toEqual({ seconds: 75.5, reps: 4, days: 2 });
  expect(compared.keptDays).toBe(1);
  expect(compared.days.map(({ date, planned, done }) => [date, planned.seconds, done.seconds])).toEqual([
    ['2026-11-02', 300, 72.5],
    ['2026-11-03', 0, 3],
    ['2026-11-05', 300, 0],
  ]);
  expect(compared.days[2]!.planned.programs).toEqual(['One set of ten', 'Nobody has this']);
});

it('is empty where nothing was written or done, and refuses a span that cannot be', () => {
  const nothing = { seconds: 0, reps: 0, days: 0 };
  expect(plannedAgainstDone({ season, records: [], from: '2027-05-01', to: '2027-05-31', doseOf })).toEqual({
    ...{ planned: nothing, done: nothing, keptDays: 0, days: [] },
  });
  expect(() => plannedAgainstDone({ season, records: [], from: '2026-11-08', to: '2026-11-02', doseOf })).toThrow(
    RangeError,
  );
});
