import { type DrillRecord, idOf } from '@larkhold/engine';
import type { App } from '../shell/app-context.ts';
import { newestDrills } from './newest-drills.ts';

/**
 * Every drill with the program of today.
 * @param app the app
 * @returns records, in any order
 */
export function drillsOf({ view }: App): DrillRecord[] {
  const id = idOf(view.chosen);
  return view.journal.drills.filter(({ programId, program }) => (programId ?? program) === id);
}

/**
 * The last drill of today with today's program.
 * @param app the app
 * @returns its record; undefined where none was done
 */
export function doneToday(app: App): DrillRecord | undefined {
  const done = drillsOf(app).filter(({ date, open, reps }) => date === app.view.today && !open && reps.length > 0);
  return newestDrills(done, 1)[0];
}
