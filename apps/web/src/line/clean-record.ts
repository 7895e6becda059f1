import type { DrillRecord, Prescription } from '@larkhold/engine';
import type { App } from '../shell/app-context.ts';

/**
 * Today's drill as the journal will have it when every rep is held.
 * @param prescription today's
 * @param app the app
 * @returns a record of middling effort and no pain
 */
export function cleanRecord({ blocks, tool }: Prescription, { view }: App): DrillRecord {
  const reps = blocks.flatMap(({ block, sets, reps, holdMs }) =>
    Array.from({ length: sets * reps }, (_, index) => ({
      ...{ block, set: Math.floor(index / reps), rep: index % reps, hand: 'usual' as const },
      ...{ prescribedMs: holdMs, heldMs: holdMs, outcome: 'held' as const },
    })),
  );
  const { id: programId, title: program } = view.chosen;
  const at = `${view.today}T06:00:00Z`;
  return {
    id: 'clean',
    program,
    programId,
    date: view.today,
    startedAt: at,
    endedAt: at,
    tool,
    reps,
    effort: 5,
    pain: false,
  };
}
