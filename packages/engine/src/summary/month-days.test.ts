import { expect, test } from 'vitest';
import type { Journal } from '../journal/journal.ts';
import { createJournal } from '../journal/merge-journals.ts';
import { daysOfMonth, weeksOfMonth } from './month-days.ts';

const rep = { block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: 5000, heldMs: 5000, outcome: 'held' } as const;
const drill = (id: string, date: string) => ({
  ...{ id, date, program: 'T', startedAt: `${date}T06:00:00+00:00`, endedAt: `${date}T06:05:00+00:00` },
  reps: [rep, rep],
});

test('every day of a month is there once, with all that was done on it', () => {
  const journal: Journal = {
    ...createJournal(),
    drills: [drill('a', '2028-02-29'), { ...drill('b', '2028-02-29'), pain: true }, drill('c', '2028-03-01')],
    days: [
      {
        date: '2028-02-03',
        arrows: [
          { kind: 'practice', count: 30 },
          { kind: 'scoring', count: 6 },
        ],
      },
    ],
  };
  const days = daysOfMonth(journal, '2028-02');
  expect(days.map(({ date }) => Number(date.slice(8)))).toEqual(Array.from({ length: 29 }, (_, index) => index + 1));
  expect(days[28]).toEqual({ date: '2028-02-29', heldMs: 20_000, arrowsCount: 0, hasPain: true });
  expect(days[2]).toEqual({ date: '2028-02-03', heldMs: 0, arrowsCount: 36, hasPain: false });
});

// 1 February 2026 is a Sunday, and the month has 28 days.
test.each([
  ['monday', 5, 6],
  ['sunday', 4, 0],
  ['saturday', 5, 1],
] as const)(
  'where weeks begin on %s, February 2026 has %i rows, the first with %i days of January',
  (start, rows, lead) => {
    const weeks = weeksOfMonth(daysOfMonth(createJournal(), '2026-02'), start);
    expect(weeks).toHaveLength(rows);
    expect(weeks[0]?.days.filter((day) => day === undefined)).toHaveLength(lead);
    expect(weeks.flatMap(({ days }) => days.filter((day) => day !== undefined))).toHaveLength(28);
    for (const { days } of weeks) expect(days).toHaveLength(7);
  },
);
