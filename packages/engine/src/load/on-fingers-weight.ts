import { checkNumber } from './check-number.ts';

/** From the pivot of the grip to where draw length is counted from, inches (AMO/ATA). */
const PIVOT_TO_BACK_INCHES = 1.75;

/** Draw length at which bows are marked, inches. */
const MARKED_AT_INCHES = 28;

/** Shown beside every estimate of the weight on the fingers. */
export const ON_FINGERS_CAUTION = 'An estimate. A bow scale at your own draw length is better.';

/**
 * Draw length as bows are marked by.
 * @param pivotInches from the string at full draw to the pivot of the grip, inches, 0 to 60
 * @returns inches
 * @throws RangeError when it is out of range
 * @source AMO/ATA: to the pivot, plus 1 3/4 in
 */
export function drawLengthInches(pivotInches: number): number {
  return checkNumber('pivotInches', pivotInches, 0, 60) + PIVOT_TO_BACK_INCHES;
}

/**
 * Estimates the weight on the fingers of a recurve bow: marked at 28 inches, it changes by 2 pounds an inch up to 40 pounds marked, by 3 above.
 * @param markedLbf what the bow is marked with, pounds-force, 0 to 100
 * @param drawInches the archer's draw length, inches, 15 to 40
 * @returns pounds-force, 0 or more; a scale's reading wins over it
 * @throws RangeError when a number is out of range
 * @source common practice, no source
 */
export function onFingersWeightLbf(markedLbf: number, drawInches: number): number {
  checkNumber('markedLbf', markedLbf, 0, 100);
  const perInch = markedLbf <= 40 ? 2 : 3;
  return Math.max(0, markedLbf + perInch * (checkNumber('drawInches', drawInches, 15, 40) - MARKED_AT_INCHES));
}
