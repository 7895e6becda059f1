import { expect, test } from 'vitest';
import type { Journal, WeekPage } from '../journal/journal.ts';
import { markDays, summarizeWeek } from './week-summary.ts';

const drill = (id: string, date: string, heldMs: number) => ({
  id,
  date,
  program: 'Slow mornings',
  startedAt: `${date}T06:30:00Z`,
  endedAt: `${date}T06:40:00Z`,
  reps: [{ block: 0, set: 0, rep: 0, hand: 'usual' as const, prescribedMs: 30_000, heldMs, outcome: 'held' as const }],
});

const journal: Journal = {
  drills: [drill('a', '2026-11-16', 20_000), drill('b', '2026-11-23', 30_000), drill('c', '2026-11-29', 31_000)],
  days: [
    { date: '2026-11-24', arrows: [{ kind: 'practice', count: 60 }], feel: 4 },
    { date: '2026-11-26', work: [{ kind: 'mobility', minutes: 15 }], feel: 3, pain: true },
  ],
  weeks: [
    { week: '2026-W46', carriedForward: 'Older', plannedDays: [1, 3] },
    { week: '2026-W47', carriedForward: 'Low front shoulder' },
  ],
};
const page: WeekPage = { week: '2026-W48' };

// Expected values: counted by hand from the journal above.
test('a week adds up, beside the one before', () => {
  const { now, before, days } = summarizeWeek(journal, page, 'monday');
  expect(now.totals).toMatchObject({ drillsCount: 2, holdMs: 61_000, arrowsCount: 60 });
  expect(now).toMatchObject({ workMinutes: 15, meanFeel: 3.5 });
  expect(before.totals).toMatchObject({ drillsCount: 1, holdMs: 20_000 });
  expect(before.meanFeel).toBeUndefined();
  expect(days.map(({ isPlanned }) => isPlanned)).toEqual([true, false, true, false, false, false, false]);
  expect(days[3]?.hasPain).toBe(true);
});

test('a list that begins on Sunday shows other days; the totals stay those of the ISO week', () => {
  const { days, now } = summarizeWeek(journal, page, 'sunday');
  expect(days[0]?.date).toBe('2026-11-22');
  expect(now.totals.drillsCount).toBe(2);
});

test('what was carried forward is the focus until it is changed, also to nothing', () => {
  expect(summarizeWeek(journal, page, 'monday')).toMatchObject({ focus: 'Low front shoulder', isFocusCarried: true });
  expect(summarizeWeek(journal, { ...page, focus: '' }, 'monday')).toMatchObject({ focus: '', isFocusCarried: false });
});

test('the strip tells drills from other work', () => {
  expect(markDays(journal, '2026-11-25', 3).map(({ mark }) => mark)).toEqual(['drill', 'other', 'nothing']);
});

test('pain that a drill tells of is on its day, and a blank line is carried nowhere', () => {
  const drills = [{ ...drill('a', '2026-11-23', 1000), pain: true }, drill('b', '2026-11-24', 1000)];
  const weeks = [{ week: '2026-W47', carriedForward: ' ', plannedDays: [7] }];
  const summary = summarizeWeek({ drills, days: [], weeks }, page, 'monday');
  expect(summary.days.map(({ hasPain }) => hasPain)).toEqual([true, false, false, false, false, false, false]);
  expect(summary).toMatchObject({ focus: '', isFocusCarried: false });
  expect(summary).not.toHaveProperty('carried');
});

test('each day goes by the plan of its own week: this page, its page, or the last one that has any', () => {
  // A list from Sunday, 22 November: that day is of week 47, the others of week 48.
  const weeks = [
    { week: '2026-W47', plannedDays: [7] },
    { week: '2026-W49', plannedDays: [2] },
  ];
  const planned = (own: WeekPage) =>
    summarizeWeek({ drills: [], days: [], weeks }, own, 'sunday').days.map(({ isPlanned }) => isPlanned);
  expect(planned(page)).toEqual([true, false, false, false, false, false, false]);
  expect(planned({ ...page, plannedDays: [1] })).toEqual([true, true, false, false, false, false, false]);
});

test('the strip counts any work, and 0 minutes are none', () => {
  const work = (date: string, kind: 'strength' | 'fitness', minutes: number) => ({ date, work: [{ kind, minutes }] });
  const days = [work('2026-11-23', 'strength', 1), work('2026-11-24', 'fitness', 1), work('2026-11-25', 'fitness', 0)];
  expect(markDays({ drills: [], days, weeks: [] }, '2026-11-25', 3)).toEqual([
    { date: '2026-11-23', mark: 'other' },
    { date: '2026-11-24', mark: 'other' },
    { date: '2026-11-25', mark: 'nothing' },
  ]);
});
