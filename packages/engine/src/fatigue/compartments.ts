import type { JointFatigue } from './joint.ts';

/** Shares of the muscle that are active and fatigued; the rest of 1 is resting. */
export interface Compartments {
  active: number;
  fatigued: number;
}

/** A muscle that has done nothing. */
export const FRESH: Compartments = { active: 0, fatigued: 0 };

/** How fast the active share follows the load, a second (Xia & Frey-Law 2008, J Biomech 41:3046). */
export const FOLLOW_RATE = 10;

/** One stretch at a steady load, solved exactly. */
export interface SteadyStretch {
  /** The compartments after some seconds. */
  at(seconds: number): Compartments;
  /** Seconds until active and resting together no longer carry the load; undefined when that is not within the given seconds. */
  failsWithin(seconds: number): number | undefined;
}

/**
 * Solves the three-compartment model exactly over a stretch of steady load, up to the moment of failing.
 *
 * The model has three cases, but until it fails they are one linear system. With MR = 1 - MA - MF, the case of a muscle with too little
 * left to recruit (MR <= TL - MA) is MF >= 1 - TL, which is failing itself; the other two have the same equation, C = L (TL - MA). So MA
 * follows one exponential and MF the sum of two.
 * @param start compartments at the beginning of the stretch
 * @param load held, as a fraction of MVC, 0 to 1
 * @param joint its rates; the rest multiplier counts only at load 0
 * @returns the solution
 * @source Xia & Frey-Law 2008, J Biomech 41:3046; Looft, Herkert & Frey-Law 2018, J Biomech 77:16 (recovery at rest). The solution is ours.
 */
export function solveSteady(start: Compartments, load: number, joint: JointFatigue): SteadyStretch {
  const { fatigueRate } = joint;
  const recovery = load === 0 ? joint.recoveryRate * joint.restMultiplier : joint.recoveryRate;
  const follow = FOLLOW_RATE + fatigueRate;
  const activeEnd = (FOLLOW_RATE * load) / follow;
  const activeGap = start.active - activeEnd;
  const fatiguedEnd = (fatigueRate * activeEnd) / recovery;
  const fastPart = (fatigueRate * activeGap) / (recovery - follow);
  const slowPart = start.fatigued - fatiguedEnd - fastPart;
  const mostFatigued = 1 - load;

  const fatiguedAt = (seconds: number) =>
    fatiguedEnd + fastPart * Math.exp(-follow * seconds) + slowPart * Math.exp(-recovery * seconds);

  return {
    at: (seconds) => ({
      active: activeEnd + activeGap * Math.exp(-follow * seconds),
      fatigued: Math.max(0, fatiguedAt(seconds)),
    }),
    failsWithin(seconds) {
      if (start.fatigued > mostFatigued) return 0;
      // The fatigued share can't cross the limit and come back: it ends up moving one way, and the active share that is too much at the start
      // and still tires (activeGap) is far less than what is left, because the shares add up to 1. So the end tells.
      if (fatiguedAt(seconds) <= mostFatigued) return undefined;
      let [low, high] = [0, seconds];
      for (let step = 0; step < 60 && high - low > 1e-9; step++) {
        const middle = (low + high) / 2;
        if (fatiguedAt(middle) > mostFatigued) high = middle;
        else low = middle;
      }
      return high;
    },
  };
}
