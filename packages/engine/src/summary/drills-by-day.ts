import type { DrillRecord } from '../journal/drill-record.ts';
import { compareInstants } from '../journal/edit-order.ts';

/** One day's drills. */
export interface DayOfDrills {
  /** ISO 8601. */
  day: string;
  /** The latest first. */
  drills: DrillRecord[];
}

/**
 * Drills by day.
 * @param drills any order
 * @returns the newest day first
 */
export function drillsByDay(drills: readonly DrillRecord[]): DayOfDrills[] {
  const byDay = new Map<string, DrillRecord[]>();
  for (const drill of drills) {
    const ofDay = byDay.get(drill.date);
    if (ofDay) ofDay.push(drill);
    else byDay.set(drill.date, [drill]);
  }
  return [...byDay]
    .sort(([a], [b]) => (a < b ? 1 : -1))
    .map(([day, ofDay]) => ({ day, drills: ofDay.sort((a, b) => compareInstants(b.startedAt, a.startedAt)) }));
}
