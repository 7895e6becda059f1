import { cleanRecord as allHeld, type DrillRecord, type Prescription } from '@larkhold/engine';
import type { App } from '../shell/app-context.ts';

/**
 * Today's drill as the journal will have it when every rep is held.
 * @param prescription today's
 * @param app the app
 * @returns a record of middling effort and no pain
 */
export function cleanRecord(prescription: Prescription, { view }: App): DrillRecord {
  const { id, title: program } = view.chosen;
  const at = `${view.today}T06:00:00Z`;
  const { tool } = prescription;
  return { ...allHeld(prescription, id, 0), program, startedAt: at, endedAt: at, tool, effort: 5, pain: false };
}
