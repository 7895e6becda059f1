import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bowShape, type Point } from './bow-shape.ts';

const distance = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y);
const length = (line: readonly Point[]) =>
  line.slice(1).reduce((sum, point, index) => sum + distance(line[index]!, point), 0);
const amounts = fc.double({ min: 0, max: 1, noNaN: true });

describe('bowShape', () => {
  it('has a straight string at rest', () => {
    const { string } = bowShape(0);
    expect(string[1].x).toBeCloseTo(string[0].x, 9);
    expect(string[2].x).toBeCloseTo(string[0].x, 9);
  });

  it('is drawn to the full depth at full draw', () => {
    expect(bowShape(1).nock.x).toBeCloseTo(0.46, 6);
  });

  // Geometry: neither string nor limb gets longer.
  it('keeps the lengths of string and limbs', () => {
    const rest = bowShape(0);
    fc.assert(
      fc.property(amounts, (amount) => {
        const shape = bowShape(amount);
        expect(length(shape.string)).toBeCloseTo(length(rest.string), 5);
        expect(length(shape.lower.line)).toBeCloseTo(length(rest.lower.line), 9);
        expect(length(shape.upper.line)).toBeCloseTo(length(rest.upper.line), 9);
      }),
    );
  });

  it('goes back evenly with the draw, its tips coming nearer to each other', () => {
    fc.assert(
      fc.property(amounts, amounts, (one, other) => {
        fc.pre(Math.abs(one - other) > 1e-4);
        const [less, more] = [bowShape(Math.min(one, other)), bowShape(Math.max(one, other))];
        expect(more.nock.x).toBeGreaterThan(less.nock.x);
        expect(more.string[2].y).toBeLessThan(less.string[2].y);
        const rest = bowShape(0).nock.x;
        expect((less.nock.x - rest) / (0.46 - rest)).toBeCloseTo(Math.min(one, other), 4);
      }),
    );
  });

  it('is the same above and below the grip, and less than one bow height tall', () => {
    const { upper, lower } = bowShape(0.7);
    for (const [index, point] of lower.line.entries()) {
      expect(upper.line[index]).toEqual({ x: point.x, y: -point.y });
      expect(Math.abs(point.y)).toBeLessThan(0.5);
    }
  });

  it('refuses an amount outside of 0 to 1', () => {
    for (const amount of [-0.1, 1.1, Number.NaN]) expect(() => bowShape(amount)).toThrow(RangeError);
  });
});
