import { type Prescription, type SessionView, timelineDurationMs } from '@larkhold/engine';
import { say } from '@larkhold/words';

/**
 * What a display shows before a drill begins: the bow at rest, the first rep to come, the whole time.
 * @param prescription today's numbers
 * @returns a view of a session that waits
 */
export function waitingView({ blocks }: Prescription): SessionView {
  const first = blocks[0];
  const repsTotal = blocks.reduce((sum, block) => sum + block.sets * block.reps, 0);
  return {
    state: 'waiting',
    msLeft: 0,
    stepMs: 0,
    offsetMs: 0,
    progress: {
      repsDone: 0,
      repsTotal,
      set: 0,
      sets: first?.sets ?? 0,
      rep: 0,
      reps: first?.reps ?? 0,
      block: 0,
      blocks: blocks.length,
      msLeft: timelineDurationMs(blocks),
    },
  };
}

/**
 * Today's blocks in short lines, to be read before a drill.
 * @param prescription today's numbers
 * @returns for example 'Steady holds: 3 sets of 10 × 30 s'
 */
export function blockLines({ blocks }: Prescription): string[] {
  return blocks.map(({ title, sets, reps, holdMs: hold }) =>
    sets === 1
      ? say('phase.blockLine', { title, reps, hold })
      : say('phase.blockLineOfSets', { title, sets, reps, hold }),
  );
}
