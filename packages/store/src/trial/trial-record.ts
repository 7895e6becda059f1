import type { DrillRecord } from '@larkhold/engine';

/** A drill as the tests of this room store it. */
export const record: DrillRecord = {
  id: 'a',
  program: 'Slow mornings',
  date: '2026-05-01',
  startedAt: '2026-05-01T08:00:00Z',
  endedAt: '2026-05-01T08:10:00Z',
  reps: [],
};
