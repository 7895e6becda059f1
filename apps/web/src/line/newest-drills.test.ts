import type { DrillRecord } from '@larkhold/engine';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { newestDrills } from './newest-drills.ts';

const drill = (minute: number, place: number): DrillRecord => {
  const startedAt = new Date(Date.UTC(2026, 0, 1, 6, minute)).toISOString();
  return { id: `${place}`, program: 'Any', date: startedAt.slice(0, 10), startedAt, endedAt: startedAt, reps: [] };
};

it('gives what putting all of them in order gives', () => {
  fc.assert(
    fc.property(fc.array(fc.nat(400), { maxLength: 60 }), fc.nat(8), (minutes, count) => {
      const drills = minutes.map(drill);
      const inOrder = drills.toSorted((a, b) => Date.parse(b.startedAt) - Date.parse(a.startedAt));
      expect(newestDrills(drills, count)).toEqual(inOrder.slice(0, count));
    }),
    { seed: 323 },
  );
});
