/** A place on the drawing: x towards the archer, y downwards; in bow heights, the grip at 0, 0. */
export interface Point {
  x: number;
  y: number;
}

/** One limb as it is drawn: its middle line from riser to tip, and how thick it is there. */
export interface LimbShape {
  line: readonly Point[];
  /** Half the thickness at each place of the line, in bow heights. */
  halfWidths: readonly number[];
}

/** A bow seen from the side at one moment. */
export interface BowShape {
  upper: LimbShape;
  lower: LimbShape;
  /** Upper tip, nocking point, lower tip. */
  string: readonly [Point, Point, Point];
  /** Where the string is held. */
  nock: Point;
}

const RISER_HALF = 0.165;
const LIMB_LENGTH = 0.352;
const SEGMENT_COUNT = 28;
/** The limb's angle where it leaves the riser, degrees from upright. */
const POCKET_DEGREES = 9;
/** How far the limb is bent when the string is straight. */
const BRACED_DEGREES = 27;
/** How far the tip curves back to the front, and how much of that opens at full draw. */
const TIP_DEGREES = 58;
const TIP_OPENS_RATIO = 0.5;
const BISECTION_COUNT = 40;

/** How far behind the grip the string is held at full draw, in bow heights. Own: about what a bow of 68 inches shows at 30. */
export const FULL_DRAW_DEPTH = 0.46;

/**
 * The shape of a bow drawn so far. Limbs and string keep their lengths, so the limbs bend just as far as the string asks of them.
 * @param amountRatio how far it is drawn, 0 (string straight) to 1 (full draw)
 * @returns limbs and string, in bow heights
 * @throws RangeError when the amount is not between 0 and 1
 * @source own; the string's and the limbs' fixed lengths are the geometry of any bow
 */
export function bowShape(amountRatio: number): BowShape {
  if (!(amountRatio >= 0 && amountRatio <= 1)) {
    throw new RangeError(`amountRatio is ${amountRatio}; expected 0 to 1`);
  }
  const braced = limbLine(BRACED_DEGREES, 0);
  const bracedTip = braced.at(-1)!;
  const halfString = bracedTip.y;
  const depth = bracedTip.x + (FULL_DRAW_DEPTH - bracedTip.x) * amountRatio;
  const nockAt = (line: readonly Point[]) => {
    const tip = line.at(-1)!;
    return tip.x + Math.sqrt(Math.max(0, halfString ** 2 - tip.y ** 2));
  };

  let line = braced;
  let nockX = bracedTip.x;
  if (amountRatio > 0) {
    let least = BRACED_DEGREES;
    let most = 150;
    for (let turn = 0; turn < BISECTION_COUNT; turn++) {
      const middle = (least + most) / 2;
      line = limbLine(middle, amountRatio);
      if (nockAt(line) < depth) least = middle;
      else most = middle;
    }
    nockX = nockAt(line);
  }

  const lower: LimbShape = { line, halfWidths: line.map((_, index) => limbHalfWidth(index / SEGMENT_COUNT)) };
  const upper: LimbShape = { line: line.map(mirrored), halfWidths: lower.halfWidths };
  const nock = { x: nockX, y: 0 };
  return { upper, lower, string: [upper.line.at(-1)!, nock, line.at(-1)!], nock };
}

/** The lower limb's middle line, from riser to tip: pieces of one length, each at its own angle. */
function limbLine(bendDegrees: number, amountRatio: number): Point[] {
  const points: Point[] = [{ x: 0.004, y: RISER_HALF }];
  let { x, y } = points[0]!;
  const piece = LIMB_LENGTH / SEGMENT_COUNT;
  for (let index = 0; index < SEGMENT_COUNT; index++) {
    const along = (index + 0.5) / SEGMENT_COUNT;
    const tipDegrees = TIP_DEGREES * (1 - TIP_OPENS_RATIO * amountRatio) * smooth((along - 0.58) / 0.42);
    const degrees = POCKET_DEGREES + bendDegrees * smooth(along / 0.78) - tipDegrees;
    const angle = (degrees * Math.PI) / 180;
    x += Math.sin(angle) * piece;
    y += Math.cos(angle) * piece;
    points.push({ x, y });
  }
  return points;
}

function limbHalfWidth(along: number): number {
  return 0.0105 - 0.0068 * along ** 0.8;
}

function mirrored({ x, y }: Point): Point {
  return { x, y: -y };
}

/** Goes from 0 to 1 without a corner at either end. */
function smooth(ratio: number): number {
  const clamped = Math.min(1, Math.max(0, ratio));
  return clamped * clamped * (3 - 2 * clamped);
}
