import { expect, it } from 'vitest';
import { lastBegun, lastDrill } from './last-drill.ts';

const drill = (id: string, startedAt: string, kind?: 'test') => ({
  ...{ id, date: startedAt.slice(0, 10), program: 'Attic mornings', startedAt, endedAt: startedAt, reps: [] },
  ...(kind ? { kind } : {}),
});

it('is the one begun last by the clock of the world, and for daily work no test', () => {
  // 07:00 in the east is before 06:30 UTC.
  const east = drill('east', '2026-11-25T07:00:00+02:00');
  const west = drill('west', '2026-11-25T06:30:00Z');
  const tested = drill('tested', '2026-11-26T06:00:00Z', 'test');
  const drills = [tested, west, east];
  expect(lastBegun(drills)).toBe(tested);
  expect(lastDrill(drills)).toBe(west);
  expect(lastBegun([])).toBeUndefined();
  expect(lastDrill([tested])).toBeUndefined();
});
