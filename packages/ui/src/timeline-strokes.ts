import type { Timeline } from '@larkhold/engine';
import { RIBBON } from './ribbon/ribbon-places.ts';
import { limbPath, tallOf } from './ribbon/ribbon-strokes.ts';

/** Widths and heights of a drawn timeline in its own units; the page stretches it. */
export const STROKES = { width: 360, height: RIBBON.tall + 4 } as const;
/** Where the strokes are. */
const GROUND_Y = STROKES.height - 2;
/** A stroke of a ribbon is as wide as this at its foot, and never takes more than this share of the way to the next. */
const FOOT_WIDE = 4.8;
const WIDEST_SHARE = 0.7;

/** A stretch of time that is drawn over the whole width. */
export interface DrawnSpan {
  fromMs: number;
  spanMs: number;
  /** The time at full height, milliseconds. */
  tallestMs: number;
}

/**
 * Holds as a ribbon's strokes to scale: each as tall as it is long, in the middle of its time, and the rests are the gaps between them.
 * @param steps of a timeline, or a part of them
 * @param span what the width represents
 * @returns an SVG path in a box of STROKES
 */
export function timelineStrokes(steps: Timeline['steps'], { fromMs, spanMs, tallestMs }: DrawnSpan): string {
  const scale = STROKES.width / Math.max(1, spanMs);
  const feet = steps
    .filter(({ kind }) => kind === 'hold')
    .map(({ startMs, durationMs }) => ({ x: (startMs + durationMs / 2 - fromMs) * scale, durationMs }));
  const apart = feet.reduce(
    (least, { x }, at) => Math.min(least, x - (feet[at - 1]?.x ?? Number.NEGATIVE_INFINITY)),
    99,
  );
  const wide = Math.min(1, (WIDEST_SHARE * apart) / FOOT_WIDE);
  return feet.map(({ x, durationMs }) => limbPath(x, GROUND_Y, tallOf(durationMs, tallestMs), wide)).join('');
}

/** The line that strokes stand on. */
export const strokesGround = `M0 ${GROUND_Y + 0.75}H${STROKES.width}`;
