import { expect, test } from 'vitest';
import { BOW_BOX, bowPaths } from './bow-paths.ts';
import { digitPlace } from './glance-digits.ts';

// What fits is geometry; the widths are those of a wide plain typeface, from memory: 0.67 of the font size for a digit, 0.36 for a colon.
const widthOf = (digits: string, fontSize: number) =>
  [...digits].reduce((sum, sign) => sum + (sign === ':' ? 0.36 : 0.67) * fontSize, 0);
/** Where the grip's swell ends. */
const GRIP_END_X = 80;

for (const amount of [0.3, 0.6, 1]) {
  test.each(['7', '28', '1:40', '12:30'])(`%s is inside a bow drawn ${amount}, clear of string and grip`, (digits) => {
    const bow = bowPaths(amount);
    const { x, fontSize } = digitPlace(digits, bow, 'right', true);
    const half = widthOf(digits, fontSize) / 2;
    const share = (fontSize * 0.72) / 2 / (BOW_BOX.height / 2 - bow.tip.y);
    expect(x + half).toBeLessThan(bow.fingers.x + (bow.tip.x - bow.fingers.x) * share);
    expect(x - half).toBeGreaterThan(GRIP_END_X);
  });
}

test('it grows as the bow opens', () => {
  const sizes = [0.1, 0.3, 0.5, 0.7, 1].map((amount) => digitPlace('28', bowPaths(amount), 'right', true).fontSize);
  expect(sizes).toEqual([...sizes].sort((a, b) => a - b));
  expect(new Set(sizes).size).toBeGreaterThan(3);
});

test.each(['7', '42', '3:00', '12:30'])('%s is beside a straight string, inside the picture', (digits) => {
  const bow = bowPaths(0);
  const { x, fontSize } = digitPlace(digits, bow, 'right', false);
  const half = widthOf(digits, fontSize) / 2;
  expect(x - half).toBeGreaterThan(bow.fingers.x);
  expect(x + half).toBeLessThanOrEqual(BOW_BOX.width);
});

test.each([
  [0, true],
  [0.4, true],
  [1, true],
  [0, false],
])('a left hand turns it over; drawn %d, inside: %s', (amount, isInside) => {
  const right = digitPlace('28', bowPaths(amount, 'right'), 'right', isInside);
  const left = digitPlace('28', bowPaths(amount, 'left'), 'left', isInside);
  expect(left.x).toBeCloseTo(BOW_BOX.width - right.x, 0);
  expect(left.fontSize).toBeCloseTo(right.fontSize, 0);
});
