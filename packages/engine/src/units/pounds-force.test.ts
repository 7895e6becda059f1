import { expect, it } from 'vitest';
import { poundsForceToNewtons } from './pounds-force.ts';

it('turns pounds-force into newtons', () => {
  // From memory of NIST SP 811 (2008), table B.8: pound-force, 4.448 222 E+00 N; and by its exact
  // definition 0.453 592 37 kg times 9.806 65 m/s2.
  expect(poundsForceToNewtons(1)).toBe(4.448_221_615_260_5);
  expect(poundsForceToNewtons(40)).toBeCloseTo(40 * 0.453_592_37 * 9.806_65, 10);
  expect(poundsForceToNewtons(0)).toBe(0);
});

it.each([Number.NaN, Number.POSITIVE_INFINITY])('throws at %s', (force) => {
  expect(() => poundsForceToNewtons(force)).toThrow(/forceLbf/);
});
