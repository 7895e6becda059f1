import type { DrillRecord } from '../journal/drill-record.ts';
import type { Journal } from '../journal/journal.ts';
import { dailyLoads } from '../load/daily-loads.ts';
import { drawImpulse } from '../load/draw-impulse.ts';
import { holdTime, seenHoldTime } from '../load/hold-time.ts';
import { type WeekLoad, weekLoad } from '../load/week-load.ts';
import { workloadRatio } from '../load/workload-ratio.ts';
import { dayNumber, dayOfNumber, mondayNumber } from '../units/calendar-day.ts';

/** Days that are looked back at most: what is older has faded from every number here. */
const MOST_DAYS = 400;
const CHRONIC_DAYS = 28;

/** What a stretch of days cost. */
export interface LoadSums {
  /** At full draw, milliseconds. */
  heldMs: number;
  /** Of `heldMs`: what a camera saw, and not the clock assumed. Absent where it saw nothing. */
  seenMs?: number;
  /** Weight on the fingers times time at full draw, newton-seconds; absent when no drill's weight is known. */
  impulseNs?: number;
  /** Drills whose weight is not known: not in the impulse. */
  unweighedCount: number;
  /** Effort times minutes. */
  load: number;
  /** Things without effort or length: not in the load. */
  unratedCount: number;
}

/** What today and the weeks up to it cost. */
export interface Loads {
  today: LoadSums;
  /** This ISO week, Monday up to today. */
  week: LoadSums;
  /** The whole ISO week before. */
  weekBefore: LoadSums;
  /** Of the seven days up to today; absent while the journal is younger. */
  sevenDays?: WeekLoad;
  /** Absent while the journal is younger than 28 days or holds no load. */
  rollingRatio?: number;
  fadingRatio?: number;
}

/**
 * What today and the weeks up to it cost.
 * @param journal visible things only
 * @param kit for the weight on the fingers, where a drill's record has none
 * @param today ISO 8601 day
 * @returns sums, evenness and ratios
 */
export function loadsOf(journal: Journal, kit: { drawWeightLbf?: number }, today: string): Loads {
  const last = dayNumber(today);
  const monday = mondayNumber(last);
  let first = today;
  for (const { date } of [...journal.drills, ...journal.days]) if (date < first) first = date;
  const known = Math.min(MOST_DAYS, last - dayNumber(first) + 1);
  const { loads } = dailyLoads(journal, today, known);
  const sums = (from: number, to: number): LoadSums => sumsOf(journal, kit, from, to);
  const rollingRatio = known >= CHRONIC_DAYS ? workloadRatio(loads) : undefined;
  const fadingRatio = known >= CHRONIC_DAYS ? workloadRatio(loads, { method: 'ewma' }) : undefined;
  return {
    ...{ today: sums(last, last), week: sums(monday, last), weekBefore: sums(monday - 7, monday - 1) },
    ...(known >= 7 && { sevenDays: weekLoad(loads.slice(-7)) }),
    ...(rollingRatio !== undefined && { rollingRatio }),
    ...(fadingRatio !== undefined && { fadingRatio }),
  };
}

function sumsOf(journal: Journal, { drawWeightLbf }: { drawWeightLbf?: number }, from: number, to: number): LoadSums {
  const [firstDay, lastDay] = [dayOfNumber(from), dayOfNumber(to)];
  const drills = journal.drills.filter(({ date }) => date >= firstDay && date <= lastDay);
  const { loads, unratedCount } = dailyLoads(journal, lastDay, to - from + 1);
  let impulseNs: number | undefined;
  let unweighedCount = 0;
  for (const record of drills) {
    const lbf = weightOf(record, drawWeightLbf);
    if (lbf === undefined) unweighedCount += 1;
    else impulseNs = (impulseNs ?? 0) + drawImpulse(record, lbf);
  }
  const seenMs = seenHoldTime(drills) * 1000;
  return {
    ...(seenMs > 0 && { seenMs }),
    ...{ heldMs: holdTime(drills) * 1000, unweighedCount, load: loads.reduce((sum, load) => sum + load, 0) },
    ...{ unratedCount, ...(impulseNs !== undefined && { impulseNs }) },
  };
}

/** The kit's weight is that of the archer's own bow: it says nothing of a lighter one, a band or a strap. */
function weightOf({ onFingersLbf, tool }: DrillRecord, kitLbf: number | undefined): number | undefined {
  if (onFingersLbf !== undefined) return onFingersLbf;
  return tool === undefined || tool === 'bow' ? kitLbf : undefined;
}
