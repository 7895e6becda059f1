import type { Cue, SessionView, Timeline } from '@larkhold/engine';

/**
 * What the coach or the archer calls in a hold.
 * @param timeline the drill's
 * @returns for a moment of it the call or the own step that was said last in this hold; empty between, undefined in a block that has none
 */
export function callsOf({ cues, steps }: Timeline): (view: SessionView) => string | undefined {
  const calls = cues.filter(({ kind }) => kind === 'call');
  const blocks = blocksWithCalls(steps, calls);
  return ({ step, offsetMs, state }) => {
    if (step === undefined || !blocks.has(step.block)) return undefined;
    if (step.kind !== 'hold' || state !== 'running') return '';
    return calls.findLast(({ atMs }) => atMs >= step.startMs && atMs <= offsetMs)?.words ?? '';
  };
}

/**
 * The blocks that have a call in one of their holds. Holds and calls both are in order of time, so that one pass finds them.
 * @param steps of a timeline
 * @param calls its cues of kind `call`
 * @returns places of blocks in the program
 */
function blocksWithCalls(steps: Timeline['steps'], calls: readonly Cue[]): ReadonlySet<number> {
  const blocks = new Set<number>();
  let next = 0;
  for (const { kind, block, startMs, durationMs } of steps) {
    while ((calls[next]?.atMs ?? Number.POSITIVE_INFINITY) < startMs) next += 1;
    const atMs = calls[next]?.atMs;
    if (kind === 'hold' && atMs !== undefined && atMs < startMs + durationMs) blocks.add(block);
  }
  return blocks;
}
