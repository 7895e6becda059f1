import type { DayEntry } from '../journal/journal.ts';
import { type DrillSummary, summarise } from './drill-summary.ts';
import type { DayLoad, LoggedDay } from './logged-day.ts';

const LBF_IN_NEWTONS = 4.4482216152605; // NIST SP 811

/**
 * What each drill of a day comes to. It is kept with the day: the body and every program read it, and a day that changes is another object.
 * @param today the day, as logged
 * @returns one a drill, in the day's order
 */
export function summariesOf(today: LoggedDay): readonly DrillSummary[] {
  today.summaries ??= today.drills.map(summarise);
  return today.summaries;
}

/**
 * What a day asked of the body.
 * @param today the day, as logged
 * @returns its sums
 */
export function loadOf(today: LoggedDay): DayLoad {
  const { day, drills, entry } = today;
  const summaries = summariesOf(today);
  const load: DayLoad = { day, heldMs: 0, impulseNs: 0, arrowCount: arrowsOf(entry), drillCount: 0, durationMs: 0 };
  for (let at = 0; at < drills.length; at++) {
    const { onFingersLbf = 0, durationMs = 0 } = drills[at]!;
    const { heldMs } = summaries[at]!;
    load.heldMs += heldMs;
    load.impulseNs += (onFingersLbf * LBF_IN_NEWTONS * heldMs) / 1000;
    load.drillCount += 1;
    load.durationMs += durationMs;
  }
  return load;
}

/** Arrows of a diary entry. */
export function arrowsOf(entry: DayEntry | undefined): number {
  return entry?.arrows?.reduce((sum, { count }) => sum + count, 0) ?? 0;
}
