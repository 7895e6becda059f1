import { expect, it } from 'vitest';
import type { DrillRecord, RepRecord } from '../journal/drill-record.ts';
import type { Journal } from '../journal/journal.ts';
import { createTotals, totalsByDay } from './totals.ts';
import { weekTotals } from './week-totals.ts';

const rep: RepRecord = {
  block: 0,
  set: 0,
  rep: 0,
  hand: 'usual',
  prescribedMs: 20_000,
  heldMs: 20_000,
  outcome: 'held',
};
const drill = (id: string, date: string, reps: RepRecord[]): DrillRecord => ({
  id,
  program: 'Slow mornings',
  date,
  startedAt: `${date}T06:00:00Z`,
  endedAt: `${date}T06:10:00Z`,
  reps,
});
const journal: Journal = {
  drills: [
    drill('a', '2026-12-31', [rep, { ...rep, heldMs: 7000, outcome: 'short' }]),
    drill('b', '2026-12-31', [{ ...rep, heldMs: 1000, outcome: 'unsure' }]),
    drill('c', '2027-01-03', [rep]),
    drill('d', '2027-01-04', [rep]),
    { ...drill('e', '2026-12-31', [rep]), removed: true },
  ],
  days: [
    {
      date: '2026-12-31',
      arrows: [
        { kind: 'blank bale', count: 60 },
        { kind: 'scoring', count: 72, distanceM: 18 },
      ],
      work: [
        { kind: 'strength', minutes: 30 },
        { kind: 'fitness', minutes: 20 },
      ],
    },
    { date: '2027-01-01', arrows: [{ kind: 'practice', count: 500 }], removed: true },
  ],
  weeks: [],
};

it('says how much of the time a camera saw; what it saw of a rep that nobody can judge is not its time', () => {
  const seen = { fromMs: 2_000, toMs: 17_000 };
  const reps = [{ ...rep, seen }, rep, { ...rep, seen, heldMs: 0, outcome: 'unsure' as const }];
  const watched = { drills: [drill('a', '2026-12-30', reps), drill('b', '2026-12-31', [rep])], days: [], weeks: [] };
  expect(totalsByDay(watched).get('2026-12-30')).toMatchObject({ holdMs: 35_000, seenMs: 15_000 });
  expect(totalsByDay(watched).get('2026-12-31')?.seenMs).toBeUndefined();
  expect(weekTotals(watched, '2026-W53')).toMatchObject({ holdMs: 55_000, seenMs: 15_000 });
});

it('adds up a day; what was removed does not count', () => {
  // Sums by hand.
  expect(totalsByDay(journal).get('2026-12-31')).toEqual({
    arrowsCount: 132,
    drillsCount: 2,
    repsCount: 3,
    heldCount: 1,
    holdMs: 28_000,
    strengthMinutes: 30,
    mobilityMinutes: 0,
    fitnessMinutes: 20,
  });
  expect([...totalsByDay(journal).keys()].sort()).toEqual(['2026-12-31', '2027-01-03', '2027-01-04']);
});

it('adds up an ISO week over the turn of a year of 53 weeks', () => {
  // ISO 8601: 2026 has 53 weeks, since it begins on a Thursday; week 53 ends on Sunday 3 January 2027.
  expect(weekTotals(journal, '2026-W53')).toMatchObject({ drillsCount: 3, holdMs: 48_000, arrowsCount: 132 });
  expect(weekTotals(journal, '2027-W01')).toMatchObject({ drillsCount: 1, holdMs: 20_000 });
  expect(weekTotals(journal, '2026-W52')).toEqual(createTotals());
});
