// Seeing: ISO 9241-3, the height of characters; at least 16 minutes of arc, better 20 to 22.
import { characterHeightMm } from '@larkhold/runner';
import { describe, expect, it } from 'vitest';

describe('character height (ISO 9241-3: h = 2 d tan(a / 2))', () => {
  it.each([
    [16, 13.96],
    [20, 17.45],
    [22, 19.2],
  ])('at 3 m, %d minutes of arc are %d mm', (arcMinutes, heightMm) => {
    expect(characterHeightMm(3, arcMinutes)).toBeCloseTo(heightMm, 2);
  });

  it('in a mirror, where the path is twice as long, is twice as much', () => {
    expect(characterHeightMm(6, 20)).toBeCloseTo(2 * characterHeightMm(3, 20), 9);
  });
});
