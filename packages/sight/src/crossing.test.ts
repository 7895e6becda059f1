import { expect, it } from 'vitest';
import { crossingAtMs } from './crossing.ts';

const readings = (...values: number[]) => values.map((value, index) => ({ atMs: index * 100, value }));

it('finds the instant between two readings', () => {
  expect(crossingAtMs(readings(0, 0, 4, 8), 1)).toBe(125);
});

it('runs back in time as well', () => {
  expect(crossingAtMs(readings(8, 4, 0, 0).toReversed(), 1)).toBe(175);
});

it('finds nothing where nothing rises, or where it was up from the start', () => {
  expect(crossingAtMs(readings(0, 0.5, 1), 1)).toBeUndefined();
  expect(crossingAtMs(readings(4, 5), 1)).toBeUndefined();
  expect(crossingAtMs([], 1)).toBeUndefined();
});
