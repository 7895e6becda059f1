import { expect, test } from 'vitest';
import type { DrillRecord } from '../journal/drill-record.ts';
import { drillsByDay } from './drills-by-day.ts';

const drill = (id: string, startedAt: string): DrillRecord => ({
  ...{ id, program: 'Attic mornings', date: startedAt.slice(0, 10), startedAt, endedAt: startedAt, reps: [] },
});

test('the newest day is first, and in a day the latest drill', () => {
  const days = drillsByDay([
    drill('a', '2026-11-23T06:00:00+00:00'),
    drill('b', '2026-11-25T06:00:00+00:00'),
    drill('c', '2026-11-25T19:00:00+00:00'),
  ]);
  expect(days.map(({ day, drills }) => [day, drills.map(({ id }) => id)])).toEqual([
    ['2026-11-25', ['c', 'b']],
    ['2026-11-23', ['a']],
  ]);
});

test('a drill in one time zone is later than one in another by the instant, not by the digits', () => {
  const [day] = drillsByDay([
    drill('Lisbon, first', '2026-11-25T09:00:00+00:00'),
    drill('Berlin, half an hour later', '2026-11-25T10:30:00+01:00'),
    drill('Lisbon again, an hour later', '2026-11-25T10:00:00+00:00'),
  ]);
  expect(day?.drills.map(({ id }) => id)).toEqual([
    'Lisbon again, an hour later',
    'Berlin, half an hour later',
    'Lisbon, first',
  ]);
});

test('an empty journal has no days', () => {
  expect(drillsByDay([])).toEqual([]);
});
