import { type DayEntry, dayEntrySchema } from '@larkhold/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { arrowLines, changeArrows, changeWork, parseCount, workLines } from './day-lines.ts';

const entry: DayEntry = {
  date: '2026-11-25',
  arrows: [
    { kind: 'scoring', count: 36, distanceM: 70 },
    { kind: 'scoring', count: 30, distanceM: 18 },
  ],
};

test('every kind has a line, and every distance its own', () => {
  expect(arrowLines(entry).map(({ kind, count }) => [kind, count])).toEqual([
    ['blank bale', 0],
    ['practice', 0],
    ['scoring', 36],
    ['scoring', 30],
  ]);
  expect(workLines(entry)).toHaveLength(3);
});

test('changing a line leaves the others, and an empty one is not kept', () => {
  expect(changeArrows(arrowLines(entry), 0, { count: 12 })).toEqual([
    { kind: 'blank bale', count: 12 },
    ...entry.arrows!,
  ]);
  expect(changeWork(workLines(entry), 1, { minutes: 0 })).toBeUndefined();
});

test('whatever is typed, the day stays valid', () => {
  fc.assert(
    fc.property(fc.string(), fc.double(), fc.nat(3), (text, distanceM, index) => {
      const distance = Number.isFinite(distanceM) ? distanceM : undefined;
      const arrows = changeArrows(arrowLines(entry), index, { count: parseCount(text, 2000), distanceM: distance });
      const work = changeWork(workLines(entry), index, { minutes: parseCount(text, 9999) });
      expect(dayEntrySchema.safeParse({ ...entry, arrows, work }).success).toBe(true);
    }),
  );
});
