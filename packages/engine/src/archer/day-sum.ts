import type { DayEntry } from '../journal/journal.ts';
import { type DrillSummary, summarise } from './drill-summary.ts';
import type { DayLoad, DaySum, LoggedDay } from './logged-day.ts';

const LBF_IN_NEWTONS = 4.4482216152605; // NIST SP 811

/**
 * Sums a day up. It is kept with the day: the body and every program read it, and a day that changes is another object.
 * @param today the day, as logged
 * @returns each drill's summary, and what the day asked of the body
 */
export function sumOfDay(today: LoggedDay): DaySum {
  const known = today.sum;
  if (known !== undefined) return known;
  const drills = today.drills.map(summarise);
  const sum = { drills, load: loadOf(today, drills) };
  today.sum = sum;
  return sum;
}

function loadOf({ day, drills, entry }: LoggedDay, summaries: readonly DrillSummary[]): DayLoad {
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
