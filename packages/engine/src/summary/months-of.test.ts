import { expect, test } from 'vitest';
import type { DrillRecord } from '../journal/drill-record.ts';
import { createJournal } from '../journal/merge-journals.ts';
import { monthBeside, monthsBeside, monthsOf } from './months-of.ts';

const rep = { block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: 5000, heldMs: 5000, outcome: 'held' } as const;
const drill = (date: string): DrillRecord => ({
  ...{ id: date, program: 'Attic mornings', date, startedAt: `${date}T06:00:00Z`, endedAt: `${date}T06:05:00Z` },
  reps: [rep, rep],
});

test('months follow each other over the turn of the year, from the shortest as from the longest', () => {
  expect(monthBeside('2026-12', 1)).toBe('2027-01');
  expect(monthBeside('2027-01', -1)).toBe('2026-12');
  expect(monthBeside('2028-02', 1)).toBe('2028-03');
  expect(monthBeside('2028-03', -1)).toBe('2028-02');
  expect(monthBeside('2026-11', -120)).toBe('2016-11');
  expect(monthBeside('2026-11', 0)).toBe('2026-11');
});

test('any month is among twelve, and no month is in two of them', () => {
  expect(monthsBeside('2026-11', '2026-11')).toHaveLength(12);
  expect([monthsBeside('2026-03', '2026-11')[0], monthsBeside('2026-03', '2026-11').at(-1)]).toEqual([
    '2025-12',
    '2026-11',
  ]);
  expect(monthsBeside('2025-11', '2026-11').at(-1)).toBe('2025-11');
  for (let back = 0; back < 60; back += 1) {
    const month = monthBeside('2026-11', -back);
    expect(monthsBeside(month, '2026-11')).toContain(month);
  }
});

test('the newest month with something in it is shown first, also on the first of the next', () => {
  const journal = { ...createJournal(), drills: [drill('2026-11-28'), drill('2026-11-30'), drill('2026-04-01')] };
  expect(monthsOf(journal, '2026-12-01')).toMatchObject({ newest: '2026-11', last: '2026-12' });
  expect(monthsOf(journal, '2026-12-01').heldMs.get('2026-11')).toBe(20_000);
  expect(monthsOf(createJournal(), '2026-12-01')).toMatchObject({ newest: '2026-12', last: '2026-12' });
  // A device whose clock ran ahead: its drill can be reached.
  expect(monthsOf({ ...createJournal(), drills: [drill('2031-01-05')] }, '2026-12-01').last).toBe('2031-01');
});
