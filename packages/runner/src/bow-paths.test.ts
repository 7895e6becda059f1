import { expect, test } from 'vitest';
import { BOW_BOX, bowPaths } from './bow-paths.ts';

const numbersOf = (path: string) => (path.match(/-?\d+(\.\d+)?/g) ?? []).map(Number);

// What a bow is, no source: nothing leaves the picture, and a left hand turns it over.
test.each([0, 0.14, 0.5, 1])('drawn %d, it stays in its box, and a left hand turns it over', (amountRatio) => {
  const right = bowPaths(amountRatio, 'right');
  const left = bowPaths(amountRatio, 'left');
  for (const part of ['limbs', 'string', 'grip'] as const) {
    const turned = numbersOf(left[part]);
    for (const [index, value] of numbersOf(right[part]).entries()) {
      const isX = index % 2 === 0;
      expect(turned[index]).toBeCloseTo(isX ? BOW_BOX.width - value : value, 0);
      expect(value).toBeGreaterThanOrEqual(0);
      expect(value).toBeLessThanOrEqual(isX ? BOW_BOX.width : BOW_BOX.height);
    }
  }
});

test('the fingers are where the string bends', () => {
  const { string, fingers } = bowPaths(1);
  expect(numbersOf(string).slice(2, 4)).toEqual([fingers.x, fingers.y]);
});
