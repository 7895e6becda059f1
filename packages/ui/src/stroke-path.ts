import { getStroke } from 'perfect-freehand';

/** A drawing: strokes of x, y pairs in 0..1 of a square, flat. */
export type Strokes = readonly (readonly number[])[];

/** The drawing of whoever has drawn nothing: always the same list, so that a redraw of the page redraws no drawing. */
export const nothingDrawn: Strokes = [];

/** What the journal takes: numbers a stroke, strokes a drawing. */
const mostNumbers = 4000;
const mostStrokes = 400;
/** Points nearer than this to the one before say nothing new. */
const leastStep = 0.004;

/**
 * The outline of a stroke as SVG path data.
 * @param stroke x, y pairs in 0..1
 * @param size of the square it is drawn in
 * @returns a closed outline; a dot for a single point
 */
export function strokePath(stroke: readonly number[], size: number): string {
  const points: [number, number][] = [];
  for (let at = 0; at + 1 < stroke.length; at += 2)
    points.push([(stroke[at] ?? 0) * size, (stroke[at + 1] ?? 0) * size]);
  const outline = getStroke(points, { size: size / 50, thinning: 0.4, smoothing: 0.5, streamline: 0.4 });
  if (outline.length === 0) return '';
  return `M${outline.map(([x, y]) => `${tenths(x)} ${tenths(y)}`).join('L')}Z`;
}

/**
 * Begins a stroke.
 * @param strokes so far
 * @param x 0..1 @param y 0..1
 * @returns the drawing with a new stroke; as it was when it is full
 */
export function beginStroke(strokes: Strokes, x: number, y: number): Strokes {
  return strokes.length >= mostStrokes ? strokes : [...strokes, [inSquare(x), inSquare(y)]];
}

/**
 * Draws the last stroke on.
 * @param strokes so far
 * @param x 0..1 @param y 0..1
 * @returns the drawing with the point added; as it was when the point says nothing new, or the stroke is full
 */
export function drawOn(strokes: Strokes, x: number, y: number): Strokes {
  const last = strokes.at(-1);
  if (!last || last.length + 2 > mostNumbers) return strokes;
  const [nextX, nextY] = [inSquare(x), inSquare(y)];
  if (Math.hypot(nextX - (last.at(-2) ?? 0), nextY - (last.at(-1) ?? 0)) < leastStep) return strokes;
  return [...strokes.slice(0, -1), [...last, nextX, nextY]];
}

/** Thousandths are finer than a finger, and keep files small. */
function inSquare(value: number): number {
  return Math.min(1, Math.max(0, Math.round(value * 1000) / 1000));
}

function tenths(value: number): number {
  return Math.round(value * 10) / 10;
}
