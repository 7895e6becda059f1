import { checkNumber } from './check-number.ts';

/** Most minutes that one session can last: a day. */
const MOST_MINUTES = 1440;

/**
 * Load of one session: how hard it was, times how long it took.
 * @param effort of the whole session, 0 to 10
 * @param minutes its length, 0 to 1440
 * @returns load in arbitrary units, 0 or more
 * @throws RangeError when effort or minutes are out of range
 * @source Foster 1998, Med Sci Sports Exerc 30:1164; Foster et al. 2001, J Strength Cond Res 15:109
 */
export function sessionLoad(effort: number, minutes: number): number {
  return checkNumber('effort', effort, 0, 10) * checkNumber('minutes', minutes, 0, MOST_MINUTES);
}
