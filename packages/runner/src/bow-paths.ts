import { bowShape, type LimbShape, type Point } from './bow-shape.ts';

/** The hand that draws. */
export type DrawHand = 'right' | 'left';

/** A drawn bow as SVG paths, in units of `BOW_BOX`. */
export interface BowPaths {
  limbs: string;
  /** The whole string. */
  string: string;
  /** The part of the string that shows the time left, on both sides of the fingers. */
  lit: string;
  grip: string;
  /** Where the fingers are on the string. */
  fingers: Point;
  /** The upper limb's tip. */
  tip: Point;
}

/** The drawing's size in its own units: `viewBox="0 0 width height"`. */
export const BOW_BOX = { width: 900, height: 1000 } as const;

/** One bow height in drawing units. */
const SCALE = 940;
/** Wider than a bow is: room inside for the number. */
const WIDEN = 1.9;
const GRIP_X = 60;
/** Limbs drawn a little stronger than they are. */
const STRENGTHEN = 1.12;

/**
 * The riser's outline, as x and y from the grip: down its front, up its back with the swell that fills the hand. The letters between the
 * points are SVG's: M begins, C bends by two points to a third, L is straight.
 */
const RISER: readonly (string | readonly [number, number])[] = [
  ...(['M', [-5, -160], 'C', [-32, -118], [-42, -60], [-33, 0]] as const),
  ...(['C', [-42, 60], [-32, 118], [-5, 160]] as const),
  ...(['L', [18, 156], 'C', [5, 120], [3, 96], [4, 74]] as const),
  ...(['C', [6, 52], [17, 40], [14, 18], 'C', [12, 0], [-3, -4], [-8, -22]] as const),
  ...(['C', [-14, -66], [-1, -118], [18, -156]] as const),
];

/**
 * The paths of a bow drawn so far. A right-handed archer's bow is on the left and its string comes to the right, as the archer sees the
 * own two hands.
 * @param amountRatio how far it is drawn, 0 to 1
 * @param hand the hand that draws; left turns the picture over
 * @param leftRatio the share of the time that is left, 0 to 1: the share of the string that is lit
 * @returns SVG paths
 * @throws RangeError when the amount is not between 0 and 1
 */
export function bowPaths(amountRatio: number, hand: DrawHand = 'right', leftRatio = 1): BowPaths {
  const shape = bowShape(amountRatio);
  const turned = ({ x, y }: Point): Point => ({ x: round(hand === 'right' ? x : BOW_BOX.width - x), y: round(y) });
  const path = (points: readonly Point[]) =>
    points
      .map(turned)
      .map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'} ${x} ${y}`)
      .join(' ');
  const [upperTip, nock, lowerTip] = shape.string.map(placed) as [Point, Point, Point];
  const towards = (tip: Point): Point => ({
    x: nock.x + (tip.x - nock.x) * leftRatio,
    y: nock.y + (tip.y - nock.y) * leftRatio,
  });
  const riser = RISER.map((part) => {
    if (typeof part === 'string') return part;
    const { x, y } = turned({ x: GRIP_X + part[0], y: BOW_BOX.height / 2 + part[1] });
    return `${x} ${y}`;
  });
  return {
    limbs: `${path(outline(shape.upper))} Z ${path(outline(shape.lower))} Z`,
    string: path([upperTip, nock, lowerTip]),
    lit: path([towards(upperTip), nock, towards(lowerTip)]),
    grip: `${riser.join(' ')} Z`,
    fingers: turned(nock),
    tip: turned(upperTip),
  };
}

function placed({ x, y }: Point): Point {
  return { x: GRIP_X + x * SCALE * WIDEN, y: BOW_BOX.height / 2 + y * SCALE };
}

/** Down one side of a limb and back along the other, at right angles to its middle. */
function outline({ line, halfWidths }: LimbShape): Point[] {
  const middle = line.map(placed);
  const side = (sign: 1 | -1) =>
    middle.map((point, index) => {
      const before = middle[Math.max(0, index - 1)]!;
      const after = middle[Math.min(middle.length - 1, index + 1)]!;
      const length = Math.hypot(after.x - before.x, after.y - before.y);
      const width = sign * halfWidths[index]! * SCALE * STRENGTHEN;
      return {
        x: point.x - (width * (after.y - before.y)) / length,
        y: point.y + (width * (after.x - before.x)) / length,
      };
    });
  return [...side(1), ...side(-1).reverse()];
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
