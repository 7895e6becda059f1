import type { RepRecord, SessionView, Step } from '@larkhold/engine';
import type { RibbonRep } from '@larkhold/ui/ribbon';

/**
 * A drill under way as a ribbon: what was done, the rep under way, and what is still to come.
 * @param holds the timeline's steps at full draw, in order
 * @param done the reps that ended, in order
 * @param view where the drill is
 * @returns one rep for each hold of the drill
 */
export function drillRibbon(
  holds: readonly Step[],
  done: readonly RepRecord[],
  { state, step }: Pick<SessionView, 'state' | 'step'>,
): RibbonRep[] {
  const isHolding = step?.kind === 'hold' && (state === 'running' || state === 'paused');
  const toCome = holds.slice(done.length).map(({ block, set, durationMs }, index): RibbonRep => {
    const outcome = isHolding && index === 0 ? 'now' : 'coming';
    return { block, set, prescribedMs: durationMs, heldMs: 0, outcome };
  });
  return [...done, ...toCome];
}
