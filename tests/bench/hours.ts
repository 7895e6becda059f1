import type { PrescribedBlock, Prescription } from '@larkhold/engine';

/** About an hour of one block: 38 holds of 30 s with a minute between them, unless something is changed. */
function hourOf(change: Partial<PrescribedBlock> = {}): Prescription {
  const block: PrescribedBlock = {
    block: 0,
    title: 'Holds',
    drill: 'holding',
    sets: 1,
    reps: 38,
    drawMs: 3000,
    holdMs: 30_000,
    letDownMs: 3000,
    restMs: 60_000,
    setRestMs: 0,
    letDownTo: 'rest',
    hand: 'usual',
    addedWeightLbf: 0,
    ...change,
  };
  return { programTitle: 'Hour', date: '2026-11-25', blocks: [block], reasons: [], cautions: [], durationMs: 0 };
}

/** 38 holds of 30 s. */
export const holdsHour = hourOf();
/** 600 power reps of 3 s. */
export const powerHour = hourOf({ sets: 10, reps: 60, drawMs: 1500, holdMs: 3000, letDownMs: 1500, restMs: 0 });
