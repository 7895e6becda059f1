import { type Compartments, FRESH, solveSteady } from './compartments.ts';
import { jointFatigue } from './joint.ts';

/** The joint a drawn bow is held by. */
export const DRAW_JOINT = jointFatigue.shoulder;

/**
 * Mean load of a draw or a let-down as a share of full draw. Own assumption: the weight rises and falls about evenly with the string's
 * way. It counts as work, not as rest, because the muscle recovers fast only while nothing is held.
 */
export const HALF_DRAWN_SHARE = 0.5;
const CLOSENESS = 1e-12;

/**
 * The fraction of MVC at which a fresh archer's hold, after its own draw, fails exactly at the archer's longest hold.
 * @param maxHoldSeconds longest hold, seconds, more than 0
 * @param drawSeconds draw before it, seconds, 0 or more
 * @returns a fraction between 0 and 1
 */
export function holdFraction(maxHoldSeconds: number, drawSeconds: number): number {
  return leastFraction((fraction) => {
    const drawn = afterDraw(FRESH, fraction, drawSeconds);
    return solveSteady(drawn, fraction, DRAW_JOINT).failsWithin(maxHoldSeconds) !== undefined;
  });
}

/**
 * The smallest fraction of MVC at which something fails. A heavier pull never fails later, so halving finds it.
 * @param fails whether it fails at a fraction
 * @returns a fraction between 0 and 1; 1 when it never fails
 */
function leastFraction(fails: (fraction: number) => boolean): number {
  let [low, high] = [0, 1];
  while (high - low > CLOSENESS) {
    const middle = (low + high) / 2;
    if (fails(middle)) high = middle;
    else low = middle;
  }
  return high;
}

function afterDraw(start: Compartments, fraction: number, drawSeconds: number): Compartments {
  return solveSteady(start, fraction * HALF_DRAWN_SHARE, DRAW_JOINT).at(drawSeconds);
}
