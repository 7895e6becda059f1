import { OWN_NOISE_SHARE } from '../archer/capacity.ts';
import type { TestResult } from '../archer/test-results.ts';
import { heldOf } from '../journal/held-of.ts';
import type { Journal } from '../journal/journal.ts';
import { dayNumber } from '../units/calendar-day.ts';

/** Days that are compared with as many before them: four weeks. */
export const VERDICT_DAYS = 28;
/** Fewest days with a clean hold on either side. Common practice, no source: a middle of fewer says little. */
const LEAST_DAYS = 3;

/** How it goes, and what says so. `unclear`: not enough to say. */
export type TrendVerdict =
  | { verdict: 'better' | 'level' | 'worse'; by: 'test'; test: TestResult; from: number; fromDate: string }
  | { verdict: 'better' | 'level' | 'worse'; by: 'holds'; nowMs: number; beforeMs: number }
  | { verdict: 'unclear' };

/**
 * Says whether somebody holds better than before: by the last test where it has one to be compared with, else by the longest clean hold of a day, the
 * middle of the last four weeks against the four before. A change within the noise of one person is level.
 * @param journal visible things only
 * @param tests results in order of time, as `testResults` gives them
 * @param today ISO 8601
 * @returns the verdict and its numbers
 * @source noise: as `OWN_NOISE_SHARE`; the comparison of two windows is our own
 */
export function trendVerdict(
  journal: Pick<Journal, 'drills'>,
  tests: readonly TestResult[],
  today: string,
): TrendVerdict {
  const test = tests.findLast(({ change, date }) => change !== undefined && isWithin(date, today, 3 * VERDICT_DAYS));
  if (test?.change) {
    const { from, fromDate, share, isNews } = test.change;
    const verdict = !isNews ? 'level' : share > 0 ? 'better' : 'worse';
    return { verdict, by: 'test', test, from, fromDate };
  }
  const longest = longestCleanByDay(journal);
  const now = valuesIn(longest, today, 0);
  const before = valuesIn(longest, today, VERDICT_DAYS);
  if (now.length < LEAST_DAYS || before.length < LEAST_DAYS) return { verdict: 'unclear' };
  const [nowMs, beforeMs] = [middle(now), middle(before)];
  const share = nowMs / beforeMs - 1;
  const verdict = Math.abs(share) < OWN_NOISE_SHARE ? 'level' : share > 0 ? 'better' : 'worse';
  return { verdict, by: 'holds', nowMs, beforeMs };
}

function longestCleanByDay({ drills }: Pick<Journal, 'drills'>): Map<string, number> {
  const longest = new Map<string, number>();
  for (const { date, reps } of drills) {
    const { longestMs } = heldOf(reps);
    if (longestMs > 0) longest.set(date, Math.max(longest.get(date) ?? 0, longestMs));
  }
  return longest;
}

function valuesIn(byDay: ReadonlyMap<string, number>, today: string, skippedDays: number): number[] {
  return [...byDay].flatMap(([date, value]) => {
    const ago = dayNumber(today) - dayNumber(date);
    return ago >= skippedDays && ago < skippedDays + VERDICT_DAYS && value > 0 ? [value] : [];
  });
}

function isWithin(date: string, today: string, days: number): boolean {
  const ago = dayNumber(today) - dayNumber(date);
  return ago >= 0 && ago < days;
}

function middle(values: readonly number[]): number {
  const sorted = values.toSorted((one, other) => one - other);
  const half = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? (sorted[half] ?? 0) : ((sorted[half - 1] ?? 0) + (sorted[half] ?? 0)) / 2;
}
