import { type Compartments, FRESH, solveSteady } from './compartments.ts';
import { DRAW_JOINT, HALF_DRAWN_SHARE, holdFraction } from './hold-fraction.ts';

/** Longest hold that is believed, seconds. */
export const MOST_HOLD_SECONDS = 3600;

/** A step as the model reads it: the shape of a timeline's steps. Times are milliseconds. */
export interface LoadedStep {
  kind: 'ready' | 'draw' | 'hold' | 'letDown' | 'rest' | 'setRest';
  startMs: number;
  durationMs: number;
  block: number;
  set: number;
  rep: number;
}

/** What a rep leaves. */
export interface RepReserve {
  block: number;
  set: number;
  rep: number;
  /** At the end of its hold, 1 (fresh) to 0 (nothing left to hold this bow with). 0 in every rep from the failing one on. */
  reserve: number;
}

/** What a timeline will do to an archer, by the model. */
export interface SessionPrediction {
  /** Every rep of the timeline, in order. */
  reps: RepReserve[];
  /** The rep in which the hold would fail, and how far into its hold; absent when the whole timeline is held. */
  failsAt?: { block: number; set: number; rep: number; secondsIn: number };
  /** Reserve along the timeline for drawing a curve: its start, the end of each step, and where it fails. Milliseconds, and 0 to 1. */
  curve: { atMs: number; reserve: number }[];
}

/**
 * Predicts what is left after each rep of a timeline, from the archer's own longest hold.
 *
 * A single hold of that length, after its draw, fails exactly there: this sets how heavy the bow is to the archer. Draws and let-downs
 * count as half the load, rests as none. Both hands tire the same shoulders, for the bow arm holds as much as the draw arm.
 * @param timeline any timeline
 * @param archer `maxHoldSeconds`: longest single hold with good form, seconds, more than 0, at most 3600
 * @returns reserve after each rep, where it would fail, and a curve
 * @throws RangeError when the longest hold is out of range
 * @source Xia & Frey-Law 2008, J Biomech 41:3046 (model), shoulder rates of Frey-Law, Looft & Heitsman 2012, J Biomech 45:1803. Loads while
 * drawing and the meaning of reserve are ours. Not calibrated on archers: show it with FATIGUE_CAUTION.
 */
export function predictSession(
  timeline: { steps: readonly LoadedStep[] },
  archer: { maxHoldSeconds: number },
): SessionPrediction {
  const { maxHoldSeconds } = archer;
  if (!(maxHoldSeconds > 0 && maxHoldSeconds <= MOST_HOLD_SECONDS))
    throw new RangeError(
      `maxHoldSeconds is ${maxHoldSeconds}; expected seconds above 0 and up to ${MOST_HOLD_SECONDS}`,
    );
  const firstDraw = timeline.steps.find((step) => step.kind === 'draw' || step.kind === 'hold');
  const drawSeconds = firstDraw?.kind === 'draw' ? firstDraw.durationMs / 1000 : 0;
  const fullDraw = holdFraction(maxHoldSeconds, drawSeconds);

  const prediction: SessionPrediction = { reps: [], curve: [{ atMs: 0, reserve: 1 }] };
  let muscle: Compartments = FRESH;
  for (const step of timeline.steps) {
    const { block, set, rep } = step;
    if (prediction.failsAt !== undefined) {
      if (step.kind === 'hold') prediction.reps.push({ block, set, rep, reserve: 0 });
      continue;
    }
    const seconds = step.durationMs / 1000;
    const solved = solveSteady(muscle, fullDraw * loadShare(step), DRAW_JOINT);
    const secondsIn = step.kind === 'hold' ? solved.failsWithin(seconds) : undefined;
    muscle = solved.at(secondsIn ?? seconds);
    const reserve = secondsIn === undefined ? reserveOf(muscle, fullDraw) : 0;
    if (secondsIn !== undefined) prediction.failsAt = { block, set, rep, secondsIn };
    if (step.kind === 'hold') prediction.reps.push({ block, set, rep, reserve });
    prediction.curve.push({ atMs: step.startMs + Math.round((secondsIn ?? seconds) * 1000), reserve });
  }
  return prediction;
}

/**
 * What a step asks of the archer.
 * @param step of a timeline
 * @returns share of the weight at full draw, 0 to 1
 */
export function loadShare(step: Pick<LoadedStep, 'kind'>): number {
  if (step.kind === 'hold') return 1;
  return step.kind === 'draw' || step.kind === 'letDown' ? HALF_DRAWN_SHARE : 0;
}

/** The share of the tiring that this bow allows which is still to come: a hold fails when the fatigued share reaches 1 - load. */
function reserveOf(muscle: Compartments, fullDraw: number): number {
  return Math.min(1, Math.max(0, 1 - muscle.fatigued / Math.max(1 - fullDraw, Number.EPSILON)));
}
