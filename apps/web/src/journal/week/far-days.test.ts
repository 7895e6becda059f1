import {
  addHandOver,
  createHandOver,
  createJournal,
  createTrends,
  formatHandOver,
  formatJournal,
  isoWeek,
  markDays,
  orderSquad,
  parseHandOver,
  parseJournal,
  summarizeArcher,
  summarizeWeek,
  weekTotals,
} from '@larkhold/engine';
import { expect, test } from 'vitest';

/** All of it is valid in a file, and none of it is what an archer drilled. */
const drill = {
  ...{ id: 'far', program: 'Nobody’s', programId: 'a program that is on no device' },
  ...{ startedAt: '2999-12-31T23:59:59.999-12:00', endedAt: '1900-01-01T00:00:00+14:00', date: '2999-12-31' },
  reps: [
    { block: 9e15, set: 0, rep: 0, hand: 'usual' as const, prescribedMs: 0, heldMs: 9e15, outcome: 'held' as const },
  ],
};
const journal = {
  ...createJournal(),
  drills: [drill, { ...drill, id: 'early', date: '1900-01-01' }, { ...drill, id: 'leap', date: '2028-02-29' }],
  days: [
    { date: '1900-01-01', feel: 3 },
    { date: '2999-12-31', feel: 3, pain: true },
  ],
  weeks: [
    { week: '2026-W53' },
    { week: '2999-W52', carriedForward: 'Far ahead' },
    { week: '1900-W01', plannedDays: [1] },
  ],
};
const today = '2026-11-25';

test('days far away do not stop the week or the trends', () => {
  expect(parseJournal(formatJournal(journal)).ok).toBe(true);
  expect(summarizeWeek(journal, { week: '2026-W48' }, 'sunday').now.totals.drillsCount).toBe(0);
  expect(markDays(journal, today, 56)).toHaveLength(56);
  for (const weekCount of [12, 52, undefined]) {
    const { points } = createTrends(journal, today, weekCount);
    expect(points.length).toBeGreaterThan(0);
    expect(points.length).toBeLessThan(4100);
    expect(points.at(-1)?.day).toBe(today);
  }
});

const made = createHandOver({
  ...{ journal, archer: 'Far', archerId: 'far', madeAt: '2026-11-25T06:00:00Z', includesNotes: true },
  ...{ from: '1900-01-01', to: '2999-12-31' },
});

test('nor a coach’s squad, also where a file ends before it begins', () => {
  for (const [from, to] of [
    ['1900-01-01', '2999-12-31'],
    ['2999-12-31', '1900-01-01'],
    ['2026-11-25', '2026-11-25'],
  ] as const) {
    const read = parseHandOver(formatHandOver({ ...made, from, to }));
    if (!read.ok) throw new Error(read.problems[0]?.message);
    const line = summarizeArcher(read.handOver, today);
    expect(Number.isFinite(line.silentDays)).toBe(true);
    expect(orderSquad([line, line])).toHaveLength(2);
    expect(addHandOver([], read.handOver).isTaken).toBe(true);
    expect(weekTotals(read.handOver, '2026-W48').drillsCount).toBe(0);
    expect(isoWeek(from) && isoWeek(to)).toMatch(/^\d{4}-W\d\d$/);
  }
});

test('what has no ISO week of four digits is refused, with its place', () => {
  for (const day of ['0000-01-01', '9999-12-31', '2026-02-29', '20261125']) {
    const read = parseHandOver(formatHandOver({ ...made, from: day }));
    expect(read.ok ? [] : read.problems).toMatchObject([{ pointer: '/from' }]);
    const file = parseJournal(formatJournal({ ...journal, drills: [{ ...drill, date: day }] }));
    expect(file.ok ? [] : file.problems).toMatchObject([{ pointer: '/drills/0/date' }]);
  }
});
