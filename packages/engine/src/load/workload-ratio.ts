import { checkNumber } from './check-number.ts';
import { MOST_DAILY_LOAD } from './week-load.ts';

/** Shown with every acute:chronic ratio (Impellizzeri et al. 2020, Sports Med, doi 10.1007/s40279-020-01378-6). */
export const WORKLOAD_RATIO_CAUTION = 'This ratio describes what was done. It does not predict injury.';

/** A mean load below this is as good as none: what is left of loads of years ago. */
const NOTHING = 1e-9;

/** How a ratio is worked out. */
export interface WorkloadRatioOptions {
  /** `rolling`: plain means of the last days, the acute days among them. `ewma`: means in which older days fade. Default rolling. */
  method?: 'rolling' | 'ewma';
  /** Days of the recent span, at least 1; default 7. */
  acuteDays?: number;
  /** Days of the long span, more than the recent one; default 28. */
  chronicDays?: number;
}

/**
 * Recent load over longer load. Days count, not sessions: a day of rest is a 0 in the series.
 * @param daily load of each day in order, the last one today; 0 to 1e9
 * @param options method and spans
 * @returns the acute:chronic workload ratio, 0 or more; undefined when there are fewer days than the long span or they hold no load
 * @throws RangeError when a load or a span is out of range
 * @source Williams et al. 2017, Br J Sports Med 51:209: lambda = 2 / (N + 1), seeded with the first day
 */
export function workloadRatio(daily: readonly number[], options: WorkloadRatioOptions = {}): number | undefined {
  const { method = 'rolling', acuteDays = 7, chronicDays = 28 } = options;
  checkSpan('acuteDays', acuteDays, 1);
  checkSpan('chronicDays', chronicDays, acuteDays + 1);
  for (const [day, load] of daily.entries()) checkNumber(`daily[${day}]`, load, 0, MOST_DAILY_LOAD);
  if (daily.length < chronicDays) return undefined;
  const meanOf = method === 'ewma' ? fadingMean : lastMean;
  const chronic = meanOf(daily, chronicDays);
  return chronic < NOTHING ? undefined : meanOf(daily, acuteDays) / chronic;
}

function checkSpan(name: string, days: number, least: number) {
  if (!Number.isInteger(days) || days < least)
    throw new RangeError(`${name} is ${days}; expected a whole number of days from ${least} on`);
}

function lastMean(daily: readonly number[], days: number): number {
  return daily.slice(-days).reduce((sum, load) => sum + load, 0) / days;
}

function fadingMean(daily: readonly number[], days: number): number {
  const lambda = 2 / (days + 1);
  return daily.reduce((mean, load) => load * lambda + mean * (1 - lambda), daily[0] ?? 0);
}
