import type { DrillRecord } from './drill-record.ts';
import { compareInstants } from './edit-order.ts';

/**
 * The drill that was begun last, a test too.
 * @param drills in any order
 * @returns its record; the first given of those that began at one instant
 */
export function lastBegun(drills: readonly DrillRecord[]): DrillRecord | undefined {
  let last: DrillRecord | undefined;
  for (const drill of drills) if (!last || compareInstants(drill.startedAt, last.startedAt) > 0) last = drill;
  return last;
}

/**
 * The daily drill that was begun last. A test is done when it is due: having done one makes it nobody's daily drill.
 * @param drills in any order
 * @returns its record, of tests none; the first given of those that began at one instant
 */
export function lastDrill(drills: readonly DrillRecord[]): DrillRecord | undefined {
  return lastBegun(drills.filter(({ kind }) => kind !== 'test'));
}
