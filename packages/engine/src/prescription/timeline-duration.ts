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
  for (let place = 0; place < blocks.length; place++) {
    const block = blocks[place]!;
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
  // Key by key: a loop over the keys' names takes eight times as long, and blocks are checked several times a prescription.
  for (let place = 0; place < blocks.length; place++) {
    const { sets, reps, drawMs, holdMs, letDownMs, restMs, setRestMs } = blocks[place]!;
    checkCount(sets, 'sets', place);
    checkCount(reps, 'reps', place);
    checkMs(drawMs, 'drawMs', place);
    checkMs(holdMs, 'holdMs', place);
    checkMs(letDownMs, 'letDownMs', place);
    checkMs(restMs, 'restMs', place);
    checkMs(setRestMs, 'setRestMs', place);
  }
}

function checkCount(count: number, key: string, place: number): void {
  if (Number.isSafeInteger(count) && count >= 1) return;
  throw new RangeError(`blocks[${place}].${key} is ${count}; expected a whole number, at least 1`);
}

function checkMs(spanMs: number, key: string, place: number): void {
  if (Number.isFinite(spanMs) && spanMs >= 0) return;
  throw new RangeError(`blocks[${place}].${key} is ${spanMs}; expected milliseconds, at least 0`);
}
