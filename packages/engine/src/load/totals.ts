import { heldOf } from '../journal/held-of.ts';
import type { Journal } from '../journal/journal.ts';

/** What was done in a stretch of days. */
export interface Totals {
  arrowsCount: number;
  drillsCount: number;
  repsCount: number;
  /** Of `repsCount`: those held in full. */
  heldCount: number;
  /** At full draw. */
  holdMs: number;
  /** Of `holdMs`: what a camera saw, and not the clock assumed. Absent where it saw nothing. */
  seenMs?: number;
  strengthMinutes: number;
  mobilityMinutes: number;
  fitnessMinutes: number;
}

/**
 * Totals of nothing done.
 * @returns every count at 0
 */
export function createTotals(): Totals {
  return {
    arrowsCount: 0,
    drillsCount: 0,
    repsCount: 0,
    heldCount: 0,
    holdMs: 0,
    strengthMinutes: 0,
    mobilityMinutes: 0,
    fitnessMinutes: 0,
  };
}

/**
 * Adds up every day of a journal in one pass. Removed things don't count.
 * @param journal any journal.
 * @returns totals by day (ISO 8601); days on which nothing was written are absent.
 */
export function totalsByDay(journal: Journal): Map<string, Totals> {
  const byDay = new Map<string, Totals>();
  const totalsOf = (day: string): Totals => {
    const totals = byDay.get(day) ?? createTotals();
    byDay.set(day, totals);
    return totals;
  };
  for (const record of journal.drills) {
    if (record.removed) continue;
    const totals = totalsOf(record.date);
    totals.drillsCount += 1;
    totals.repsCount += record.reps.length;
    const { heldMs, seenMs, fullCount } = heldOf(record.reps);
    totals.holdMs += heldMs;
    addSeen(totals, seenMs);
    totals.heldCount += fullCount;
  }
  for (const entry of journal.days) {
    if (entry.removed) continue;
    const totals = totalsOf(entry.date);
    for (const arrows of entry.arrows ?? []) totals.arrowsCount += arrows.count;
    for (const work of entry.work ?? []) totals[`${work.kind}Minutes`] += work.minutes;
  }
  return byDay;
}

/**
 * Adds totals to a sum.
 * @param sum changed in place. @param totals what is added.
 */
export function addTotals(sum: Totals, totals: Totals): void {
  sum.arrowsCount += totals.arrowsCount;
  sum.drillsCount += totals.drillsCount;
  sum.repsCount += totals.repsCount;
  sum.heldCount += totals.heldCount;
  sum.holdMs += totals.holdMs;
  addSeen(sum, totals.seenMs ?? 0);
  sum.strengthMinutes += totals.strengthMinutes;
  sum.mobilityMinutes += totals.mobilityMinutes;
  sum.fitnessMinutes += totals.fitnessMinutes;
}

function addSeen(sum: Totals, seenMs: number): void {
  if (seenMs > 0) sum.seenMs = (sum.seenMs ?? 0) + seenMs;
}
