import fc from 'fast-check';
import { expect, it } from 'vitest';

it('a property without a seed of its own gives the same values in every run', () => {
  const drawn = () => {
    const values: number[] = [];
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 999 }), (value) => void values.push(value)),
      { numRuns: 5 },
    );
    return values;
  };
  expect(drawn()).toEqual(drawn());
});
