import type { Step, Timeline } from '../timeline/timeline.ts';
import type { SessionView } from './session-view.ts';
import { offsetMsAt, type Walk } from './walk.ts';

type Sizes = { blocks: number[]; sets: Map<number, number>; reps: Map<number, number>; repCount: number };

/**
 * Makes a view of walks of one timeline; sizes are counted once.
 * @param timeline what is walked
 * @returns a function of state, walk and the caller's clock (milliseconds)
 */
export function viewer(timeline: Timeline): (state: SessionView['state'], walk: Walk, nowMs: number) => SessionView {
  const sizes = measure(timeline.steps);
  return (state, walk, nowMs) => {
    const { step } = walk;
    const msLeft = state === 'running' ? walk.dueAtMs - nowMs : walk.leftMs;
    const next = timeline.steps[walk.nextIndex];
    const lastRep = walk.reps.at(-1);
    const place = step ?? lastRep ?? timeline.steps[0];
    const endMs = step === undefined ? 0 : step.startMs + step.durationMs;
    const view: SessionView = {
      state,
      msLeft,
      stepMs: walk.stepMs,
      offsetMs: offsetMsAt(walk, msLeft),
      progress: {
        repsDone: walk.reps.length,
        repsTotal: sizes.repCount,
        set: place?.set ?? 0,
        sets: sizes.sets.get(place?.block ?? 0) ?? 0,
        rep: place?.rep ?? 0,
        reps: sizes.reps.get(place?.block ?? 0) ?? 0,
        block: Math.max(0, sizes.blocks.indexOf(place?.block ?? 0)),
        blocks: sizes.blocks.length,
        msLeft: step === undefined ? 0 : msLeft + timeline.durationMs - endMs,
      },
    };
    if (walk.pausedBy !== undefined) view.pausedBy = walk.pausedBy;
    if (step !== undefined) view.step = step;
    if (next !== undefined) view.next = next;
    if (state === 'running') view.originMs = walk.dueAtMs - endMs;
    if (lastRep !== undefined) view.lastRep = lastRep;
    return view;
  };
}

/**
 * How many reps a timeline holds.
 * @param timeline what is walked
 * @returns count of draws
 */
export function repCountOf(timeline: Timeline): number {
  return timeline.steps.filter((step) => step.kind === 'draw').length;
}

function measure(steps: readonly Step[]): Sizes {
  const sizes: Sizes = { blocks: [], sets: new Map(), reps: new Map(), repCount: 0 };
  for (const { kind, block, set, rep } of steps) {
    if (kind === 'draw') sizes.repCount++;
    if (!sizes.sets.has(block)) sizes.blocks.push(block);
    sizes.sets.set(block, Math.max(sizes.sets.get(block) ?? 0, set + 1));
    sizes.reps.set(block, Math.max(sizes.reps.get(block) ?? 0, rep + 1));
  }
  return sizes;
}
