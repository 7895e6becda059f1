import type { Cue, Timeline } from '@larkhold/engine';

/**
 * The blocks that have a call in one of their holds. Holds and calls both are in order of time, so that one pass finds them.
 * @param steps of a timeline
 * @param calls its cues of kind `call`
 * @returns places of blocks in the program
 */
export function blocksWithCalls(steps: Timeline['steps'], calls: readonly Cue[]): ReadonlySet<number> {
  const blocks = new Set<number>();
  let next = 0;
  for (const { kind, block, startMs, durationMs } of steps) {
    while ((calls[next]?.atMs ?? Number.POSITIVE_INFINITY) < startMs) next += 1;
    const atMs = calls[next]?.atMs;
    if (kind === 'hold' && atMs !== undefined && atMs < startMs + durationMs) blocks.add(block);
  }
  return blocks;
}
