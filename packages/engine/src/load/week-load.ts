import { checkNumber } from './check-number.ts';

/** Largest daily load that is accepted: far above any day's, far below what a number can hold. */
export const MOST_DAILY_LOAD = 1e9;

/** Loads that differ by less than this share are the same: sums of decimals differ in their last digits. */
const SAME_SHARE = 1e-9;

/** What a week of daily loads comes to, in the units of the loads. */
export interface WeekLoad {
  total: number;
  mean: number;
  /** Mean over the sample standard deviation of the seven days. Absent when all days are equal: then it is not defined. */
  monotony?: number;
  /** Total times monotony; absent with it. */
  strain?: number;
}

/**
 * Adds up a week and says how even it was. The standard deviation is the sample's (n - 1); with the population's, monotony and strain
 * would be 1.0801 times as large.
 * @param daily load of each of seven days, 0 to 1e9; a day of rest is 0
 * @returns total, mean, monotony and strain; the last two are absent when all days are equal
 * @throws RangeError when there are not seven days or a load is out of range
 * @source Foster 1998, Med Sci Sports Exerc 30:1164
 */
export function weekLoad(daily: readonly number[]): WeekLoad {
  if (daily.length !== 7) throw new RangeError(`daily has ${daily.length} days; expected 7`);
  let total = 0;
  for (const [day, load] of daily.entries()) total += checkNumber(`daily[${day}]`, load, 0, MOST_DAILY_LOAD);
  const mean = total / 7;
  const most = Math.max(...daily);
  if (most - Math.min(...daily) <= most * SAME_SHARE) return { total, mean };
  // Deviations are counted as shares of the largest day, so that the squares of very small loads don't vanish.
  const variance = daily.reduce((sum, load) => sum + ((load - mean) / most) ** 2, 0) / 6;
  const monotony = mean / most / Math.sqrt(variance);
  return { total, mean, monotony, strain: total * monotony };
}
