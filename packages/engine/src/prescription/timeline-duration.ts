import type { PrescribedBlock } from './prescription.ts';

/** The ready step, milliseconds: long enough to step back to the shooting position with the bow in hand. Own: no source. */
export const READY_MS = 10_000;

type BlockTimes = Pick<PrescribedBlock, 'sets' | 'reps' | 'drawMs' | 'holdMs' | 'letDownMs' | 'restMs' | 'setRestMs'>;

/**
 * The length of the timeline that `layOut` would make, without making it.
 * @param blocks today's blocks in order; times in milliseconds
 * @returns whole milliseconds, the ready step included; 0 without a block
 * @throws RangeError when a block's times or counts are no plain numbers in range
 */
export function timelineDurationMs(blocks: readonly BlockTimes[]): number {
  checkBlocks(blocks);
  let totalMs = blocks.length === 0 ? 0 : READY_MS;
  for (const [place, block] of blocks.entries()) {
    const { sets, reps } = block;
    const repMs = Math.round(block.drawMs) + Math.round(block.holdMs) + Math.round(block.letDownMs);
    const setRestCount = place === blocks.length - 1 ? sets - 1 : sets;
    totalMs +=
      sets * (reps * repMs + (reps - 1) * Math.round(block.restMs)) + setRestCount * Math.round(block.setRestMs);
  }
  return totalMs;
}

/**
 * Checks that blocks can be laid out.
 * @param blocks today's blocks
 * @throws RangeError naming the block, the key and its value
 */
export function checkBlocks(blocks: readonly BlockTimes[]): void {
  for (const [place, block] of blocks.entries()) {
    for (const key of ['sets', 'reps'] as const) {
      if (!Number.isSafeInteger(block[key]) || block[key] < 1) {
        throw new RangeError(`blocks[${place}].${key} is ${block[key]}; expected a whole number, at least 1`);
      }
    }
    for (const key of ['drawMs', 'holdMs', 'letDownMs', 'restMs', 'setRestMs'] as const) {
      if (!Number.isFinite(block[key]) || block[key] < 0) {
        throw new RangeError(`blocks[${place}].${key} is ${block[key]}; expected milliseconds, at least 0`);
      }
    }
  }
}
