import type { Outcome, RepRecord, Why } from '../journal/drill-record.ts';
import { READY_MS } from '../prescription/timeline-duration.ts';
import { REST_OVER_FROM_MS, REST_OVER_MS } from '../timeline/lay-out.ts';
import type { Step, Timeline } from '../timeline/timeline.ts';

/** What one press of more rest adds, milliseconds. Common practice, no source. */
export const MORE_REST_MS = 30_000;

/** Where a session is in its timeline. Plain data; every function here takes one and gives the next. */
export interface Walk {
  /** The step under way; absent when none is left. After a skip or a gap it may be a wait that the timeline does not hold. */
  step?: Step;
  /** The timeline's step that follows. */
  nextIndex: number;
  /** The step's length as lived, milliseconds. */
  stepMs: number;
  /** While running: the caller's clock at the step's end. */
  dueAtMs: number;
  /** While not running: what is left of the step, milliseconds. */
  leftMs: number;
  /** The offset in the timeline never lies before this one, milliseconds. */
  floorMs: number;
  pausedBy?: 'archer' | 'gap';
  /** Reps that ended, in order. */
  reps: RepRecord[];
  /** The caller's clock at the beginning of the hold under way, or of the last one; absent where a pause or a gap came between. */
  holdAtMs?: number;
  /** The caller's clock at which full draw was seen, while no let-down has been seen since. */
  drawnAtMs?: number;
}

/** Whether the step is one in which the archer stands and waits for the next draw. */
export function isWait(walk: Walk): boolean {
  const kind = walk.step?.kind;
  return kind === 'ready' || kind === 'rest' || kind === 'setRest';
}

/** Whether a rep is under way: drawing or holding. */
export function isRep(walk: Walk): boolean {
  return walk.step?.kind === 'draw' || walk.step?.kind === 'hold';
}

/** A walk before its first step. */
export function stand(timeline: Timeline): Walk {
  const first = timeline.steps[0];
  const walk: Walk = { step: undefined, nextIndex: 0, stepMs: 0, dueAtMs: 0, leftMs: 0, floorMs: 0, reps: [] };
  return first === undefined ? walk : { ...enter(timeline, walk, 0, 0), leftMs: first.durationMs };
}

/** Begins a timeline's step at a moment; past the last one no step is left. */
export function enter(timeline: Timeline, walk: Walk, index: number, atMs: number): Walk {
  const step = timeline.steps[index];
  if (step === undefined) return end(walk, timeline.durationMs);
  const { durationMs, startMs } = step;
  const { pausedBy, reps } = walk;
  // What is known of the hold under way or just over is kept; a new draw begins again.
  const isDraw = step.kind === 'draw';
  return {
    step,
    nextIndex: index + 1,
    stepMs: durationMs,
    dueAtMs: atMs + durationMs,
    leftMs: 0,
    floorMs: startMs,
    pausedBy,
    reps,
    holdAtMs: isDraw ? undefined : step.kind === 'hold' ? atMs : walk.holdAtMs,
    drawnAtMs: isDraw ? undefined : walk.drawnAtMs,
  };
}

/** Ends the step at its deadline, however late the caller is, and begins the next there. */
export function endStep(timeline: Timeline, walk: Walk): Walk {
  const ended = walk.step?.kind === 'hold' ? record(timeline, walk, 'held', walk.stepMs) : walk;
  return enter(timeline, ended, walk.nextIndex, walk.dueAtMs);
}

/** Ends every step that is due by a moment. */
export function endDueSteps(timeline: Timeline, walk: Walk, atMs: number): Walk {
  let now = walk;
  while (now.step !== undefined && now.dueAtMs <= atMs) now = endStep(timeline, now);
  return now;
}

/** While running: the caller's clock at the end of the whole walk. */
export function endsAtMs(timeline: Timeline, { step, dueAtMs }: Walk): number {
  return step === undefined ? dueAtMs : dueAtMs + timeline.durationMs - step.startMs - step.durationMs;
}

/** Cuts a rep short, or gives it up: the let-down begins at once. */
export function cutRep(timeline: Timeline, walk: Walk, outcome: 'short' | 'skipped', atMs: number): Walk {
  const cut = record(timeline, walk, outcome, heldMsAt(walk, walk.dueAtMs - atMs));
  return enter(timeline, cut, indexOf(timeline, 'letDown', walk.nextIndex - 1), atMs);
}

/** Says why the last rep was let down early, or takes it back. */
export function sayWhy(walk: Walk, why: Why | undefined): Walk {
  const last = walk.reps.at(-1);
  if (last?.outcome !== 'short' || last.why === why) return walk;
  const { why: _before, ...rest } = last;
  return { ...walk, reps: [...walk.reps.slice(0, -1), why === undefined ? rest : { ...rest, why }] };
}

/** Leaves the coming rep out: the wait goes on to the draw after it, as a set rest if the rep ended its set. */
export function skipNext(timeline: Timeline, walk: Walk, atMs: number): Walk {
  const { steps } = timeline;
  const skipped = steps[walk.nextIndex];
  const step = walk.step;
  if (skipped === undefined || step === undefined) return walk;
  const recorded = record(timeline, { ...walk, step: skipped }, 'skipped', 0);
  const drawIndex = indexOf(timeline, 'draw', walk.nextIndex + 1);
  const draw = steps[drawIndex];
  if (draw === undefined) return end(recorded, timeline.durationMs);

  const after = waitBefore(timeline, drawIndex);
  const addedMs = walk.stepMs - step.durationMs;
  let leftMs = walk.dueAtMs - atMs;
  let { durationMs } = step;
  let kind = step.kind;
  let owner = skipped;
  if (kind === 'ready') {
    owner = draw; // still the wait before the first draw
  } else if (after?.kind === 'setRest') {
    const restedMs = walk.stepMs - leftMs;
    kind = 'setRest';
    // A set rest shorter than what was rested must not begin a draw at once.
    leftMs = Math.max(after.durationMs + addedMs - restedMs, Math.min(leftMs, READY_MS));
    durationMs = restedMs + leftMs - addedMs;
  }
  const { block, set, rep, hand } = owner;
  const wait: Step = { kind, startMs: draw.startMs - durationMs, durationMs, block, set, rep, hand };
  return beginWait(timeline, recorded, wait, drawIndex, leftMs, durationMs + addedMs, atMs);
}

/** Lengthens the wait under way. The offset does not move meanwhile, or goes back to just before the call for the draw, to have it again. */
export function addRest(walk: Walk, addMs: number, leftMs: number): Walk {
  const { step } = walk;
  if (step === undefined) return walk;
  const endMs = step.startMs + step.durationMs;
  const callMs = step.kind !== 'ready' && step.durationMs >= REST_OVER_FROM_MS ? endMs - REST_OVER_MS - 1 : endMs;
  const floorMs = Math.min(Math.max(walk.floorMs, endMs - leftMs), callMs);
  return { ...walk, floorMs, stepMs: walk.stepMs + addMs, dueAtMs: walk.dueAtMs + addMs, leftMs: walk.leftMs + addMs };
}

/** Ends the wait under way early: what is left of it is the time to stand to, as before the first draw. */
export function cutRest(walk: Walk, atMs: number): Walk {
  const cutMs = walk.dueAtMs - atMs - READY_MS;
  return cutMs <= 0 ? walk : { ...walk, stepMs: walk.stepMs - cutMs, dueAtMs: walk.dueAtMs - cutMs };
}

/** Stops the clock by the archer's wish. */
export function pause(walk: Walk, atMs: number): Walk {
  return { ...walk, leftMs: walk.dueAtMs - atMs, pausedBy: 'archer', holdAtMs: undefined, drawnAtMs: undefined };
}

/** Lets a paused or waiting walk go on. */
export function resume(walk: Walk, atMs: number): Walk {
  return { ...walk, dueAtMs: atMs + walk.leftMs, leftMs: 0, pausedBy: undefined };
}

/**
 * Time was lost after a last known moment. The rep under way is unsure; the walk waits before the next one, with time enough to stand to.
 */
export function loseTime(timeline: Timeline, walk: Walk, knownMs: number): Walk {
  const leftMs = walk.dueAtMs - knownMs;
  if (isWait(walk)) {
    const waiting: Walk = { ...walk, leftMs, pausedBy: 'gap', holdAtMs: undefined, drawnAtMs: undefined };
    return leftMs < READY_MS ? addRest(waiting, READY_MS - leftMs, leftMs) : waiting;
  }
  const known = isRep(walk) ? record(timeline, walk, 'unsure', heldMsAt(walk, leftMs)) : walk;
  const drawIndex = indexOf(timeline, 'draw', walk.nextIndex);
  const draw = timeline.steps[drawIndex];
  if (draw === undefined) return { ...end(known, timeline.durationMs), pausedBy: 'gap' };
  const { block, set, rep, hand } = draw;
  const wait: Step = { kind: 'ready', startMs: draw.startMs - READY_MS, durationMs: READY_MS, block, set, rep, hand };
  return {
    ...beginWait(timeline, known, wait, drawIndex, READY_MS, READY_MS, knownMs),
    leftMs: READY_MS,
    pausedBy: 'gap',
  };
}

/** Ends the walk early. A rep under way is short. */
export function stop(timeline: Timeline, walk: Walk, leftMs: number): Walk {
  const ended = isRep(walk) ? record(timeline, walk, 'short', heldMsAt(walk, leftMs)) : walk;
  return end(ended, offsetMsAt(walk, leftMs));
}

/** The offset in the timeline at which this much of the step is left, milliseconds. */
export function offsetMsAt(walk: Walk, leftMs: number): number {
  const { step } = walk;
  return step === undefined ? walk.floorMs : Math.max(walk.floorMs, step.startMs + step.durationMs - leftMs);
}

function end(walk: Walk, offsetMs: number): Walk {
  const nextIndex = Number.MAX_SAFE_INTEGER;
  return { ...walk, step: undefined, nextIndex, stepMs: 0, leftMs: 0, floorMs: offsetMs, pausedBy: undefined };
}

function beginWait(
  timeline: Timeline,
  walk: Walk,
  wait: Step,
  drawIndex: number,
  leftMs: number,
  stepMs: number,
  atMs: number,
): Walk {
  const drawStartMs = wait.startMs + wait.durationMs;
  const after = waitBefore(timeline, drawIndex);
  // Where the wait is longer than the timeline's own, the offset stops just inside that one, so that no cue of a rep
  // that is left behind comes again.
  const floorMs = after === undefined ? drawStartMs : Math.min(after.startMs + 1, drawStartMs);
  const begun = { ...walk, step: wait, nextIndex: drawIndex, stepMs, dueAtMs: atMs + leftMs, leftMs: 0, floorMs };
  return { ...begun, holdAtMs: undefined, drawnAtMs: undefined };
}

/** The timeline's own wait before a draw, if it has one. */
function waitBefore(timeline: Timeline, drawIndex: number): Step | undefined {
  const before = timeline.steps[drawIndex - 1];
  return before?.kind === 'rest' || before?.kind === 'setRest' ? before : undefined;
}

function indexOf(timeline: Timeline, kind: Step['kind'], fromIndex: number): number {
  const { steps } = timeline;
  let index = fromIndex;
  while (index < steps.length && steps[index]?.kind !== kind) index++;
  return index;
}

function record(timeline: Timeline, walk: Walk, outcome: Outcome, heldMs: number): Walk {
  const { step, reps } = walk;
  if (step === undefined) return walk;
  const { block, set, rep, hand } = step;
  const hold = step.kind === 'hold' ? step : timeline.steps[indexOf(timeline, 'hold', walk.nextIndex)];
  const prescribedMs = hold?.durationMs ?? 0;
  const addedWeightLbf = timeline.addedWeightsLbf?.[block];
  const ended: RepRecord = { block, set, rep, hand, prescribedMs, heldMs: Math.min(heldMs, prescribedMs), outcome };
  if (addedWeightLbf !== undefined) ended.addedWeightLbf = addedWeightLbf;
  return { ...walk, reps: [...reps, ended] };
}

/** Whole milliseconds at full draw so far. The tiny addition undoes what binary fractions take away: 11999.999999 is 12 s. */
function heldMsAt(walk: Walk, leftMs: number): number {
  return walk.step?.kind === 'hold' ? Math.max(0, Math.floor(walk.stepMs - leftMs + 1e-6)) : 0;
}
