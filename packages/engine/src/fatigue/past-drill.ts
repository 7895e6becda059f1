import type { DrillRecord } from '../journal/drill-record.ts';
import { trueHeldMs, trueOutcome } from '../journal/true-held-ms.ts';
import type { Program } from '../program/program.ts';
import { type Compartments, FRESH, solveSteady } from './compartments.ts';
import { DRAW_JOINT, HALF_DRAWN_SHARE } from './hold-fraction.ts';

/** A drill as it was really done, up to its first early let-down. */
export interface PastDrill {
  stretches: { share: number; seconds: number; isHold: boolean }[];
  /** Of the first draw. */
  drawSeconds: number;
  /** Whether strength gave out in the last hold, as far as anybody said. */
  endsEarly: boolean;
}

/**
 * Lays out again what was done: held times from the record, draws, let-downs and rests from the program. Where a hold was let down early,
 * what came after is left out; so is a rep that was let down in the draw, and what came after it.
 * @param record one drill
 * @param programs among which its program is looked for, by id where both have one, else by title
 * @returns undefined when the program or a block is not known, nothing was held, or a rep before the first early let-down is unsure or skipped
 */
export function retrace(record: DrillRecord, programs: readonly Program[]): PastDrill | undefined {
  const program = programs.find((one) =>
    one.id !== undefined && record.programId !== undefined ? one.id === record.programId : one.title === record.program,
  );
  const stretches: PastDrill['stretches'] = [];
  let drawSeconds: number | undefined;
  for (const [index, rep] of record.reps.entries()) {
    const block = program?.blocks[rep.block];
    const [heldMs, outcome] = [trueHeldMs(rep), trueOutcome(rep)];
    if (block === undefined || outcome === 'unsure' || outcome === 'skipped') return undefined;
    // Let down in the draw: no hold was begun, so none was given up. An interruption says nothing.
    if (outcome === 'short' && (heldMs === 0 || rep.why === 'interrupted')) break;
    const before = record.reps[index - 1];
    const blockBefore = before && program?.blocks[before.block];
    if (before !== undefined && blockBefore !== undefined) {
      const isSetOver = before.set !== rep.set || before.block !== rep.block;
      const { rest } = blockBefore;
      const betweenReps = 'seconds' in rest ? rest.seconds : (rest.timesHold * before.prescribedMs) / 1000;
      const seconds = isSetOver ? (blockBefore.setRest ?? 0) : betweenReps;
      stretches.push({ share: HALF_DRAWN_SHARE, seconds: blockBefore.letDown, isHold: false });
      stretches.push({ share: 0, seconds, isHold: false });
    }
    drawSeconds ??= block.draw;
    stretches.push({ share: HALF_DRAWN_SHARE, seconds: block.draw, isHold: false });
    stretches.push({ share: 1, seconds: heldMs / 1000, isHold: true });
    // Let down because the form went: that time was held, and nobody knows how much longer it could have been.
    if (outcome === 'short') return { stretches, drawSeconds, endsEarly: rep.why !== 'form' };
  }
  return drawSeconds === undefined ? undefined : { stretches, drawSeconds, endsEarly: false };
}

/**
 * Whether, by the model, an archer fails within the holds of a drill.
 * @param drill as it was done
 * @param fraction of MVC that full draw is to the archer
 * @returns true when some hold could not have been held to where it was
 */
export function failsBeforeEnd(drill: PastDrill, fraction: number): boolean {
  let muscle: Compartments = FRESH;
  for (const { share, seconds, isHold } of drill.stretches) {
    const solved = solveSteady(muscle, fraction * share, DRAW_JOINT);
    if (isHold && solved.failsWithin(seconds) !== undefined) return true;
    muscle = solved.at(seconds);
  }
  return false;
}
