import { noteScrapSchema } from '@larkhold/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { beginStroke, drawOn, type Strokes, strokePath } from './stroke-path.ts';

const coordinate = fc.double({ min: -2, max: 3, noNaN: true });

test('whatever is drawn stays within the square and within what the journal takes', () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(coordinate, coordinate, fc.boolean()), { maxLength: 200 }), (moves) => {
      let strokes: Strokes = [];
      for (const [x, y, begins] of moves) strokes = begins ? beginStroke(strokes, x, y) : drawOn(strokes, x, y);
      expect(noteScrapSchema.safeParse({ id: 'a', madeAt: '2026-11-25T06:30:00Z', strokes }).success).toBe(true);
      expect(strokes.flat().every((at) => at >= 0 && at <= 1)).toBe(true);
    }),
  );
});

test('a full drawing takes no more', () => {
  let strokes: Strokes = [[0, 0]];
  for (let at = 0; at < 3000; at++) strokes = drawOn(strokes, at % 2, at % 2);
  expect(strokes[0]).toHaveLength(4000);
  for (let at = 0; at < 500; at++) strokes = beginStroke(strokes, 0, 0);
  expect(strokes).toHaveLength(400);
});

test('a hand that hardly moves adds nothing', () => {
  const strokes = beginStroke([], 0.5, 0.5);
  expect(drawOn(strokes, 0.501, 0.5)).toBe(strokes);
  expect(drawOn(strokes, 0.51, 0.5)).toEqual([[0.5, 0.5, 0.51, 0.5]]);
  expect(drawOn([], 0.5, 0.5)).toEqual([]);
});

test('a stroke and a dot are outlines, nothing is nothing', () => {
  expect(strokePath([0.1, 0.1, 0.9, 0.9], 100)).toMatch(/^M[\d.-]+ [\d.-]+L.*Z$/);
  expect(strokePath([0.5, 0.5], 100)).toMatch(/^M.*Z$/);
  expect(strokePath([], 100)).toBe('');
});
