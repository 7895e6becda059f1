import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pressInstant } from './press-instant.ts';

const ORIGIN_MS = 1_795_000_000_000;

test.each([
  ['as the page counts', 59_400, 59_400],
  ['from 1970, as older engines did', ORIGIN_MS + 59_400, 59_400],
  ['from when the device started', 86_400_000, 60_000],
  ['of this very moment', 60_000, 60_000],
  ['five seconds old', 55_000, 55_000],
  ['older than five seconds', 54_999, 60_000],
  ['in the future', 60_010, 60_000],
  ['older than any press that is of use', 54_000, 60_000],
  ['none', undefined, 60_000],
  ['zero, as made events of some browsers', 0, 60_000],
  ['no number', Number.NaN, 60_000],
])('a stamp %s', (_, stampMs, expectedMs) => {
  expect(pressInstant(stampMs, 60_000, ORIGIN_MS)).toBe(expectedMs);
});

test('whatever the stamp: never in the future, and never older than five seconds', () => {
  fc.assert(
    fc.property(fc.double(), fc.double({ min: 0, max: 1e9, noNaN: true }), (stampMs, nowMs) => {
      const atMs = pressInstant(stampMs, nowMs, ORIGIN_MS);
      expect(atMs).toBeLessThanOrEqual(nowMs);
      expect(nowMs - atMs).toBeLessThanOrEqual(5000);
    }),
    { seed: 5 },
  );
});
