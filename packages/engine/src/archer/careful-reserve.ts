import { HALF_TIME_SECONDS } from './drill-summary.ts';

/** A stretch of a timeline, as far as this reading goes. */
interface Stretch {
  kind: string;
  durationMs: number;
  block: number;
  set: number;
  rep: number;
}

/** Reps of one kind, and the rests between them, in seconds. */
export interface RepeatedHolds {
  holdSeconds: number;
  reps: number;
  sets: number;
  restSeconds: number;
  setRestSeconds: number;
}

/** How much of the longest hold may be used up by the end of any rep, as a share: the form has to last too. Own, careful: no source. */
const USED_AT_MOST = 0.9;

/**
 * The longest single hold that repeated holds ask for, if the ability to hold comes back by half in 72 s.
 *
 * It is the careful reading: the compartment model of `fatigue` lets a shoulder recover many times as fast, and is kind to moderate drills.
 * @param holds reps, sets and rests
 * @returns seconds of one hold from fresh
 * @source Sahlin & Ren 1989, J Appl Physiol 67:648 (half-time about 1.2 min, after a hold to failure). That used-up seconds add up is ours.
 */
export function neededHoldSeconds({ holdSeconds, reps, sets, restSeconds, setRestSeconds }: RepeatedHolds): number {
  const left = 2 ** (-restSeconds / HALF_TIME_SECONDS);
  const leftAfterSet = 2 ** (-setRestSeconds / HALF_TIME_SECONDS);
  let used = 0;
  let most = 0;
  for (let set = 0; set < sets; set++) {
    for (let rep = 0; rep < reps; rep++) {
      used = used * (rep === 0 ? leftAfterSet : left) + holdSeconds;
    }
    most = Math.max(most, used);
  }
  return most / USED_AT_MOST;
}

/**
 * The hold that an archer can repeat.
 * @param longestSeconds the longest single hold, seconds
 * @param holdsOf what is asked for at a hold, whose seconds it gets
 * @param mostSeconds the longest hold of interest
 * @returns seconds, in halves, at least 1
 */
export function repeatableHoldSeconds(
  longestSeconds: number,
  holdsOf: (holdSeconds: number) => RepeatedHolds,
  mostSeconds: number,
): number {
  let [low, high] = [0, mostSeconds];
  if (neededHoldSeconds(holdsOf(high)) <= longestSeconds) return high;
  for (let turn = 0; turn < 12; turn++) {
    const middle = (low + high) / 2;
    if (neededHoldSeconds(holdsOf(middle)) <= longestSeconds) low = middle;
    else high = middle;
  }
  return Math.max(1, Math.floor(low * 2) / 2);
}

/**
 * The rep in which a longest hold is used up, if the ability to hold comes back by half in 72 s. `predictSession` is kinder: by its model a shoulder
 * recovers many times as fast. Draws and let-downs count as neither work nor rest.
 * @param steps of a timeline
 * @param longestSeconds the longest single hold, seconds
 * @returns the place of the first such hold; undefined where it lasts
 * @source Sahlin & Ren 1989, J Appl Physiol 67:648 (half-time about 1.2 min, after a hold to failure). That used-up seconds add up is ours.
 * @example carefulLimit(layOut(prescription).steps, 30)
 */
export function carefulLimit(
  steps: readonly Stretch[],
  longestSeconds: number,
): { block: number; set: number; rep: number } | undefined {
  let used = 0;
  for (const { kind, durationMs, block, set, rep } of steps) {
    if (kind === 'hold') used += durationMs / 1000;
    else if (kind === 'rest' || kind === 'setRest') used *= 2 ** (-durationMs / 1000 / HALF_TIME_SECONDS);
    if (used > longestSeconds + 1e-9) return { block, set, rep };
  }
  return undefined;
}
