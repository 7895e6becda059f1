import type { BodyPoint, BodyPoints } from './body-points.ts';
import { readStance } from './read-stance.ts';

/** A line on the picture: x and y of its ends, pixels. */
export interface FormLine {
  part: 'shoulders' | 'drawForearm' | 'bowArm';
  from: { x: number; y: number };
  to: { x: number; y: number };
}

/** Below this the model is not sure enough of a point to draw a line to it. */
const LEAST_SCORE = 0.5;

/**
 * The archer's own lines in one frame: shoulder to shoulder, the draw forearm, the bow arm.
 * @param points one person's points, pixels
 * @returns only those whose ends are surely seen
 */
export function formLines(points: BodyPoints): FormLine[] {
  const { drawSide } = readStance(points);
  const bowSide = drawSide === 'left' ? 'right' : 'left';
  const ends: [FormLine['part'], BodyPoint, BodyPoint][] = [
    ['shoulders', points[`${bowSide}Shoulder`], points[`${drawSide}Shoulder`]],
    ['drawForearm', points[`${drawSide}Wrist`], points[`${drawSide}Elbow`]],
    ['bowArm', points[`${bowSide}Shoulder`], points[`${bowSide}Wrist`]],
  ];
  return ends
    .filter(([, a, b]) => Math.min(a.score, b.score) >= LEAST_SCORE)
    .map(([part, { x, y }, b]) => ({ part, from: { x, y }, to: { x: b.x, y: b.y } }));
}
