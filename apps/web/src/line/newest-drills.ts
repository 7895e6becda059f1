import { compareInstants, type DrillRecord } from '@larkhold/engine';

/**
 * The drills that began last, without putting ten years of them in order.
 * @param drills in any order
 * @param count how many
 * @returns the newest first
 */
export function newestDrills(drills: readonly DrillRecord[], count: number): DrillRecord[] {
  const newest: DrillRecord[] = [];
  for (const drill of drills) {
    let at = newest.length;
    while (at > 0 && compareInstants(newest[at - 1]!.startedAt, drill.startedAt) < 0) at--;
    if (at < count) newest.splice(at, 0, drill);
    if (newest.length > count) newest.pop();
  }
  return newest;
}
