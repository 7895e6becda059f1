import { fitToLimit } from './fit-minutes.ts';
import type { PrescribedBlock } from './prescription.ts';
import type { Reason } from './reason.ts';
import { reasonOf } from './reason-of.ts';
import { timeUnderTensionMs } from './time-under-tension.ts';
import { timelineDurationMs } from './timeline-duration.ts';

/** The minutes a drill has, and whether somebody gave them or they are ours. */
export interface Room {
  minutes: number;
  isGiven: boolean;
}

/**
 * Fits today's blocks into the minutes there are, and says what was given up.
 * @param blocks today's blocks
 * @param room the minutes
 * @param counts whether what is left is enough to climb by
 * @returns the blocks that fit, and the reasons if anything was given up
 */
export function fitBlocks(
  blocks: PrescribedBlock[],
  room: Room,
  counts: (blocks: readonly PrescribedBlock[]) => 'climb' | 'place',
): { blocks: PrescribedBlock[]; reasons: Reason[] } {
  const limitMs = room.minutes * 60_000;
  if (blocks.length === 0 || timelineDurationMs(blocks) <= limitMs) return { blocks, reasons: [] };
  const fitted = [...fitToLimit(blocks, limitMs)];
  const sharePercent = Math.round((100 * timeUnderTensionMs({ blocks: fitted })) / timeUnderTensionMs({ blocks }));
  const isHoldCut = fitted.some((kept) => kept.holdMs < blocks.find(({ block }) => block === kept.block)!.holdMs);
  const acts = isHoldCut ? (['sets', 'reps', 'hold', 'duration'] as const) : (['sets', 'reps', 'duration'] as const);
  const facts = { minutes: room.minutes, sharePercent, counts: counts(fitted) };
  const isOver = timelineDurationMs(fitted) > limitMs ? 1 : 0;
  const whole = room.isGiven
    ? reasonOf('minutes', { ...facts, isOver }, { acts })
    : reasonOf('halfHour', facts, { acts });
  return { blocks: fitted, reasons: [whole, ...blocks.flatMap((block) => givenUp(block, fitted))] };
}

function givenUp(block: PrescribedBlock, fitted: readonly PrescribedBlock[]): Reason[] {
  const kept = fitted.find((other) => other.block === block.block);
  const { sets = 0, reps = 0, holdMs = 0 } = kept ?? {};
  if (sets === block.sets && reps === block.reps && holdMs === block.holdMs) return [];
  const from = { fromSets: block.sets, fromReps: block.reps, fromHold: block.holdMs / 1000 };
  const facts = { title: block.title, ...from, sets, reps, hold: holdMs / 1000 };
  return [reasonOf('shorter', facts, { block: block.block })];
}
