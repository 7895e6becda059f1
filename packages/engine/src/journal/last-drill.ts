import type { DrillRecord } from './drill-record.ts';
import { compareInstants } from './edit-order.ts';

/**
 * The drill that was begun last. A test is done when it is due: having done one makes it nobody's daily drill.
 * @param drills in any order
 * @returns its record, of tests none; the first given of those that began at one instant
 */
export function lastDrill(drills: readonly DrillRecord[]): DrillRecord | undefined {
  let last: DrillRecord | undefined;
  for (const drill of drills) {
    if (drill.kind !== 'test' && (!last || compareInstants(drill.startedAt, last.startedAt) > 0)) last = drill;
  }
  return last;
}
