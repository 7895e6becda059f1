import { bowShape, type LimbShape, type Point } from './bow-shape.ts';

/** The hand that draws. */
export type DrawHand = 'right' | 'left';

/** A drawn bow as SVG paths, in units of `BOW_BOX`. */
export interface BowPaths {
  limbs: string;
  string: string;
  grip: string;
  /** Where the fingers are on the string. */
  fingers: Point;
}

/** The drawing's size in its own units: `viewBox="0 0 width height"`. */
export const BOW_BOX = { width: 900, height: 1000 } as const;

/** One bow height in drawing units. */
const SCALE = 940;
/** Wider than a bow is: room inside for the number. */
const WIDEN = 1.9;
const GRIP_X = 60;
const GRIP_HALF = 0.165;

/**
 * The paths of a bow drawn so far. A right-handed archer's bow is on the left and its string comes to the right, as the archer sees the
 * own two hands.
 * @param amountRatio how far it is drawn, 0 to 1
 * @param hand the hand that draws; left turns the picture over
 * @returns SVG paths
 * @throws RangeError when the amount is not between 0 and 1
 */
export function bowPaths(amountRatio: number, hand: DrawHand = 'right'): BowPaths {
  const shape = bowShape(amountRatio);
  const place = ({ x, y }: Point): Point => {
    const fromLeft = GRIP_X + x * SCALE * WIDEN;
    return {
      x: round(hand === 'right' ? fromLeft : BOW_BOX.width - fromLeft),
      y: round(BOW_BOX.height / 2 + y * SCALE),
    };
  };
  const path = (points: readonly Point[]) =>
    points
      .map(place)
      .map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'} ${x} ${y}`)
      .join(' ');
  return {
    limbs: `${path(outline(shape.upper))} Z ${path(outline(shape.lower))} Z`,
    string: path(shape.string),
    grip: path([
      { x: 0, y: -GRIP_HALF },
      { x: 0, y: GRIP_HALF },
    ]),
    fingers: place(shape.nock),
  };
}

/** Down one side of a limb and back along the other. */
function outline({ line, halfWidths }: LimbShape): Point[] {
  const front = line.map(({ x, y }, index) => ({ x: x - halfWidths[index]!, y }));
  const back = line.map(({ x, y }, index) => ({ x: x + halfWidths[index]!, y }));
  return [...front, ...back.reverse()];
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
