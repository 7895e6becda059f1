import { describe, expect, it } from 'vitest';
import { arcMinutesOf, characterHeightMm, digitLegibility, likelyPixelMm, sightPathM } from './legibility.ts';

describe('characterHeightMm', () => {
  // ISO 9241-3: h = 2 d tan(a / 2); at 3 m 13.96 mm at 16 minutes of arc, 17.45 to 19.20 at 20 to 22.
  it.each([
    [16, 13.96],
    [20, 17.45],
    [22, 19.2],
  ])('at 3 m and %f minutes is %f mm', (arcMinutes, heightMm) => {
    expect(characterHeightMm(3, arcMinutes)).toBeCloseTo(heightMm, 2);
  });

  // The same formula by hand: 20 minutes of arc are 5.81776 thousandths of the distance.
  it.each([
    [1, 5.818],
    [2, 11.636],
    [3, 17.453],
    [4, 23.271],
    [6, 34.907],
  ])('at %f m and 20 minutes is %f mm', (distanceM, heightMm) => {
    expect(characterHeightMm(distanceM, 20)).toBeCloseTo(heightMm, 2);
    expect(arcMinutesOf(heightMm, distanceM)).toBeCloseTo(20, 2);
  });

  it('refuses what is no number', () => {
    expect(() => characterHeightMm(0, 20)).toThrow(RangeError);
    expect(() => characterHeightMm(3, Number.NaN)).toThrow(RangeError);
  });
});

describe('likelyPixelMm', () => {
  // A phone's pixel: 1/160 inch, as the Android documentation defines a density-independent pixel. Else CSS: 1/96 inch.
  it('takes a small touch screen for a phone', () => {
    expect(likelyPixelMm(390, true)).toBeCloseTo(0.15875, 5);
    expect(likelyPixelMm(390, false)).toBeCloseTo(0.26458, 5);
    expect(likelyPixelMm(820, true)).toBeCloseTo(0.26458, 5);
  });
});

describe('digitLegibility', () => {
  it('counts the whole path of the mirror', () => {
    expect(sightPathM({ distanceM: 2, mirrorToScreenM: 2.5 })).toBe(4.5);
    const straight = digitLegibility({ distanceM: 2 }, 100);
    const mirror = digitLegibility({ distanceM: 2, mirrorToScreenM: 2 }, 100);
    expect(mirror.neededPx).toBeCloseTo(straight.neededPx * 2, 6);
  });

  it('warns only where the screen falls short of 20 minutes of arc, and says how far it reaches', () => {
    const { neededPx } = digitLegibility({ distanceM: 3 }, 1);
    // 17.45 mm of digit height at 96 pixels to the inch: 65.97 px of digit.
    expect(neededPx * 0.71).toBeCloseTo(65.97, 1);
    expect(digitLegibility({ distanceM: 3 }, Math.ceil(neededPx)).warning).toBeUndefined();
    const short = digitLegibility({ distanceM: 3 }, neededPx / 2);
    expect(short.arcMinutes).toBeCloseTo(10, 3);
    expect(short.warning).toBe(
      'The digits are too small for 3\u00a0m. On this screen they read well up to 1.5\u00a0m.',
    );
  });
});
