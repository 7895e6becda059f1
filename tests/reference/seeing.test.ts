// Seeing: ISO 9241-3, the height of characters; at least 16 minutes of arc, better 20 to 22. Heights worked out from its formula
// h = 2 d tan(a / 2), millimetres, to the hundredth.
import { characterHeightMm, digitLegibility, sightPathM } from '@larkhold/runner';
import { describe, expect, it } from 'vitest';

const HEIGHTS = [
  // metres, 16', 20', 22'
  [1, 4.65, 5.82, 6.4],
  [2, 9.31, 11.64, 12.8],
  [3, 13.96, 17.45, 19.2],
  [4, 18.62, 23.27, 25.6],
  [6, 27.93, 34.91, 38.4],
] as const;

describe('character height (ISO 9241-3: h = 2 d tan(a / 2))', () => {
  it.each(HEIGHTS)('at %d m is %d, %d and %d mm at 16, 20 and 22 minutes of arc', (distanceM, least, easy, most) => {
    expect(characterHeightMm(distanceM, 16)).toBeCloseTo(least, 2);
    expect(characterHeightMm(distanceM, 20)).toBeCloseTo(easy, 2);
    expect(characterHeightMm(distanceM, 22)).toBeCloseTo(most, 2);
  });

  it('in a mirror, where the path is twice as long, is twice as much', () => {
    expect(characterHeightMm(6, 20)).toBeCloseTo(2 * characterHeightMm(3, 20), 9);
    expect(sightPathM({ distanceM: 3, mirrorToScreenM: 3 })).toBe(6);
  });
});

describe('digits on a screen', () => {
  // A pixel of half a millimetre and a digit of 0.71 of its font: 100 px of font are 35.5 mm of digit.
  const pixelMm = 0.5;
  it.each(HEIGHTS)('at %d m are warned of just below 20 minutes of arc and not at it', (distanceM, _least, easy) => {
    const enoughPx = (easy + 0.01) / (pixelMm * 0.71);
    const shortPx = (easy - 0.02) / (pixelMm * 0.71);
    expect(digitLegibility({ distanceM }, enoughPx, pixelMm).warning).toBeUndefined();
    expect(digitLegibility({ distanceM }, shortPx, pixelMm).warning).toContain('too small');
    // The same by a mirror, half of the way to it and half back.
    const halves = { distanceM: distanceM / 2, mirrorToScreenM: distanceM / 2 };
    expect(digitLegibility(halves, enoughPx, pixelMm).warning).toBeUndefined();
    expect(digitLegibility(halves, shortPx, pixelMm).warning).toContain('by the mirror');
  });
});
