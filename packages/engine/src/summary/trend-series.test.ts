import { expect, test } from 'vitest';
import type { Journal } from '../journal/journal.ts';
import { createJournal } from '../journal/merge-journals.ts';
import { createTrends } from './trend-series.ts';

const day = (number: number) => new Date(Date.UTC(2026, 8, 7) + number * 86_400_000).toISOString().slice(0, 10);

/** 70 days from Monday 7 September 2026: 30 minutes at effort 5 every other day. */
const journal: Journal = {
  ...createJournal(),
  days: Array.from({ length: 70 }, (_, index) => ({
    date: day(index),
    feel: 1 + (index % 5),
    ...(index % 2 === 0 ? { work: [{ kind: 'fitness' as const, minutes: 30, effort: 5 }] } : {}),
  })),
  drills: [
    {
      ...{ id: 'a', date: day(69), program: 'Slow mornings' },
      ...{ startedAt: `${day(69)}T06:30:00Z`, endedAt: `${day(69)}T06:40:00Z` },
      reps: [
        { block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: 30_000, heldMs: 30_000, outcome: 'held' },
        { block: 0, set: 0, rep: 1, hand: 'usual', prescribedMs: 60_000, heldMs: 41_000, outcome: 'short' },
      ],
    },
  ],
};

// Foster 1998: load is effort times minutes, 150 each. The week of 150, 0, 150, 0, 150, 0, 150 has mean 85.714 and sample standard
// deviation 80.178, so monotony 1.069 and strain 641.4. Worked out by hand.
test('weeks have their load, monotony and strain, and the ratio once there are 28 days', () => {
  const { points, step } = createTrends(journal, day(69));
  expect(step).toBe('week');
  expect(points).toHaveLength(10);
  expect(points[0]?.day).toBe(day(6));
  expect(points[0]?.values).toMatchObject({ load: 600, arrows: 0 });
  expect(points[0]?.values.monotony).toBeCloseTo(1.069, 3);
  expect(points[0]?.values.strain).toBeCloseTo(641.43, 1);
  expect(points.map(({ values }) => values.ratio !== undefined)).toEqual([
    ...Array(3).fill(false),
    ...Array(7).fill(true),
  ]);
  // 28 days hold 14 sessions; the first 7 of the fourth week, which begins on an odd day, hold 3: (450 / 7) / (2100 / 28) = 0.857.
  expect(points[3]?.values.ratio).toBeCloseTo(0.857, 3);
});

test('a hold that was let down early is no clean one', () => {
  const { points, step, unratedCount } = createTrends(journal, day(69), 12);
  expect(step).toBe('day');
  expect(points.at(-1)).toMatchObject({ day: day(69), values: { hold: 71_000, longest: 30_000, feel: 5 } });
  expect(points).toHaveLength(70);
  expect(unratedCount).toBe(1);
});

test('with nothing written there is nothing to show', () => {
  expect(createTrends(createJournal(), day(0)).points).toEqual([]);
});

test('how long holds stayed whole is the middle of those that a camera could judge', () => {
  const [drill] = journal.drills;
  if (drill === undefined) throw new Error('no drill');
  const seen = (wholeMs: number, at: number) => ({
    ...{
      block: 0,
      set: 0,
      rep: at,
      hand: 'usual' as const,
      prescribedMs: 30_000,
      heldMs: 30_000,
      outcome: 'held' as const,
    },
    seen: { fromMs: 0, toMs: 30_000, moved: [], wholeMs },
  });
  const reps = [...drill.reps, seen(30_000, 2), seen(12_000, 3), seen(14_000, 4)];
  const { points } = createTrends({ ...journal, drills: [{ ...drill, reps }] }, day(69), 12);
  expect(points.at(-1)?.values.whole).toBe(14_000);
  expect(points.at(-2)?.values).not.toHaveProperty('whole');
});
