import { BOW_BOX, type BowPaths, type DrawHand } from './bow-paths.ts';

/** Where the large number is in the drawing, in units of `BOW_BOX`. */
export interface DigitPlace {
  /** The number's middle. */
  x: number;
  /** Its base line. */
  y: number;
  fontSize: number;
}

/** Beside a straight string: the middle, the room there is and the largest, in drawing units. */
const BESIDE = { x: 575, room: 590, largest: 340 };
/** Inside a drawn bow: where the grip ends, the room kept to the string, and the smallest number. */
const INSIDE = { from: 96, margin: 24, smallest: 60 };
/** Font size of two digits inside a full bow, drawing units. */
export const LARGEST_DIGITS = 400;
/** Widths and height of common plain typefaces, as shares of the font size. */
const DIGIT_WIDTH = 0.67;
const COLON_WIDTH = 0.36;
const HEIGHT = 0.72;

/**
 * Where the number goes: beside a straight string, and inside a drawn bow, growing as it opens.
 * @param digits the number as it is shown
 * @param bow the bow as it is drawn
 * @param hand the hand that draws
 * @param isInside whether the bow is being drawn, held or let down
 * @returns place and font size, as large as fits
 */
export function digitPlace(
  digits: string,
  bow: Pick<BowPaths, 'fingers' | 'tip'>,
  hand: DrawHand,
  isInside: boolean,
): DigitPlace {
  const shape = [...digits].reduce((sum, sign) => sum + (sign === ':' ? COLON_WIDTH : DIGIT_WIDTH), 0);
  const width = Math.max(shape, 2 * DIGIT_WIDTH);
  const place = isInside ? inside(width, bow, hand) : beside(width);
  return { ...place, x: hand === 'right' ? place.x : BOW_BOX.width - place.x };
}

function beside(width: number): DigitPlace {
  return placeAt(BESIDE.x, Math.min(BESIDE.largest, BESIDE.room / width));
}

function inside(width: number, { fingers, tip }: Pick<BowPaths, 'fingers' | 'tip'>, hand: DrawHand): DigitPlace {
  const fingersX = hand === 'right' ? fingers.x : BOW_BOX.width - fingers.x;
  const room = fingersX - INSIDE.margin - INSIDE.from;
  // The string comes in from the fingers to the tips: the taller the number, the less room beside it.
  const slope = (Math.abs(fingers.x - tip.x) / Math.abs(fingers.y - tip.y)) * (HEIGHT / 2);
  const fontSize = Math.max(INSIDE.smallest, Math.min(LARGEST_DIGITS, room / (width + slope)));
  return placeAt(INSIDE.from + Math.max(0, room - slope * fontSize) / 2, fontSize);
}

function placeAt(x: number, fontSize: number): DigitPlace {
  return { x, y: BOW_BOX.height / 2 + (fontSize * HEIGHT) / 2, fontSize };
}
