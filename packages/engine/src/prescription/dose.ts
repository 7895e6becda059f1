import type { LeverValues } from './ladder-path.ts';

/** What is asked of one block: seconds, counts, pounds-force. */
export type Dose = LeverValues;

/** Half seconds are the finest hold that the rules set themselves; a file's own are kept. */
export function halfSeconds(seconds: number): number {
  return Math.floor(seconds * 2 + 1e-9) / 2;
}

/** The shortest hold that the rules go down to: two seconds, or the file's own where that is shorter. */
export function leastHold(foot: Dose): number {
  return Math.min(2, foot.hold);
}

/** Time at full draw, seconds. */
export function totalSeconds({ hold, reps, sets }: Dose): number {
  return hold * reps * sets;
}

/** Nowhere more than either. */
export function leastOf(a: Dose, b: Dose): Dose {
  return {
    hold: Math.min(a.hold, b.hold),
    reps: Math.min(a.reps, b.reps),
    sets: Math.min(a.sets, b.sets),
    addedWeight: Math.min(a.addedWeight, b.addedWeight),
  };
}

/** The shorter hold, the lighter weight, and the sets and reps of the one with fewer reps in all: 2 × 3 and 3 × 2 are not 2 × 2. */
export function fewestOf(a: Dose, b: Dose): Dose {
  const { sets, reps } = b.sets * b.reps < a.sets * a.reps ? b : a;
  return { hold: Math.min(a.hold, b.hold), reps, sets, addedWeight: Math.min(a.addedWeight, b.addedWeight) };
}

/** Nowhere less than either. */
export function mostOf(a: Dose, b: Dose): Dose {
  return {
    hold: Math.max(a.hold, b.hold),
    reps: Math.max(a.reps, b.reps),
    sets: Math.max(a.sets, b.sets),
    addedWeight: Math.max(a.addedWeight, b.addedWeight),
  };
}

/**
 * Less of the holds and less of the reps, each by the same share; where less than one rep would be left, the hold alone gives the rest.
 * @param dose what is made less
 * @param keep the share of the time at full draw that may be left, 0 to 1
 * @param least the shortest hold to go down to, seconds
 * @returns nowhere more than the dose; hold and reps fall with `keep` and never rise
 */
export function shrink(dose: Dose, keep: number, least: number): Dose {
  const side = Math.sqrt(keep);
  const reps = dose.reps * side;
  const sets = reps < 1 ? dose.sets * reps : dose.sets;
  return {
    hold: Math.min(dose.hold, Math.max(least, halfSeconds(dose.hold * side * Math.min(1, sets)))),
    reps: Math.max(1, Math.floor(reps + 1e-9)),
    sets: Math.max(1, Math.floor(sets + 1e-9)),
    addedWeight: dose.addedWeight,
  };
}

/**
 * Fewer reps, then fewer sets, until the time at full draw is no more than a limit; at least one rep.
 * @param dose what is made less
 * @param limitSeconds time at full draw
 * @returns the hold as it was
 */
export function fewerReps(dose: Dose, limitSeconds: number): Dose {
  if (totalSeconds(dose) <= limitSeconds + 1e-9) return dose;
  for (let sets = dose.sets; sets >= 1; sets--) {
    const reps = Math.min(dose.reps, Math.floor(limitSeconds / (sets * dose.hold) + 1e-9));
    if (reps >= 1) return { ...dose, sets, reps };
  }
  return { ...dose, sets: 1, reps: 1 };
}

/** Whether two doses ask the same. */
export function isSameDose(a: Dose, b: Dose): boolean {
  return a.hold === b.hold && a.reps === b.reps && a.sets === b.sets && a.addedWeight === b.addedWeight;
}
