import { fitToLimit } from './fit-minutes.ts';
import type { PrescribedBlock, Reason } from './prescription.ts';
import { counted } from './reason-words.ts';
import { timelineDurationMs } from './timeline-duration.ts';

/**
 * Fits today's blocks into the minutes there are, and says what was given up.
 * @param blocks today's blocks
 * @param minutes whole minutes
 * @returns the blocks that fit, and the reason if anything was given up
 */
export function fitBlocks(blocks: PrescribedBlock[], minutes: number): { blocks: PrescribedBlock[]; reason?: Reason } {
  const limitMs = minutes * 60_000;
  if (timelineDurationMs(blocks) <= limitMs) return { blocks };
  const fitted = [...fitToLimit(blocks, limitMs)];
  const share = Math.round((100 * heldMs(fitted)) / heldMs(blocks));
  const given = blocks.flatMap((block) => {
    const kept = fitted.find((other) => other.block === block.block);
    if (!kept) return [`${block.title} left out`];
    if (kept.holdMs < block.holdMs) return [`${block.title} cut to one hold of ${kept.holdMs / 1000} s`];
    return kept.sets === block.sets && kept.reps === block.reps
      ? []
      : [`${block.title} ${kept.sets} × ${kept.reps} instead of ${block.sets} × ${block.reps}`];
  });
  const over = timelineDurationMs(fitted) > limitMs ? ' Even one rep takes longer than that.' : '';
  const change = `In ${counted(minutes, 'minute')}: ${given.join('; ')}. ${share} % of today's time at full draw is left.${over}`;
  const isHoldCut = fitted.some((kept) => kept.holdMs < blocks.find(({ block }) => block === kept.block)!.holdMs);
  const acts = isHoldCut ? (['sets', 'reps', 'hold', 'duration'] as const) : (['sets', 'reps', 'duration'] as const);
  return { blocks: fitted, reason: { rule: 'minutes', facts: { minutes, sharePercent: share }, change, acts } };
}

function heldMs(blocks: readonly PrescribedBlock[]): number {
  return blocks.reduce((sum, { sets, reps, holdMs }) => sum + sets * reps * holdMs, 0);
}
