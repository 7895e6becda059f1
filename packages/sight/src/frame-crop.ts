import type { BodyPoints } from './body-points.ts';
import { readStance } from './read-stance.ts';

/** A square of the picture, pixels; it may reach over the edge. */
export interface FrameCrop {
  x: number;
  y: number;
  size: number;
}

/** Four torso lengths show an archer with both arms out. */
const TORSOS = 4;

/**
 * The square that shows a whole picture.
 * @param width pixels
 * @param height pixels
 * @returns the square around it
 */
export function wholeCrop(width: number, height: number): FrameCrop {
  const size = Math.max(width, height);
  return { x: (width - size) / 2, y: (height - size) / 2, size };
}

/**
 * The square to ask the model about next. It moves rarely, because each move shifts every point a little.
 * @param crop the present one
 * @param points what was seen in it; undefined where nobody was
 * @param whole the square of the whole picture
 * @returns the same square, or a better one
 */
export function nextCrop(crop: FrameCrop, points: BodyPoints | undefined, whole: FrameCrop): FrameCrop {
  if (points === undefined) return whole;
  const { torso, trunk, centre } = readStance(points);
  if (trunk < 0.3) return whole;
  const size = Math.min(whole.size, torso * TORSOS);
  // The trunk's middle lies below the middle of an archer with a raised bow.
  const wanted = { x: centre.x - size / 2, y: centre.y - size * 0.5 - torso * 0.15, size };
  const off = Math.hypot(wanted.x + size / 2 - crop.x - crop.size / 2, wanted.y + size / 2 - crop.y - crop.size / 2);
  const isGood = off < torso * 0.6 && size > crop.size * 0.75 && size < crop.size * 1.25;
  return isGood ? crop : wanted;
}
