/** What a joint's fatigue is worked out from. */
export interface JointFatigue {
  /** Endurance time in seconds is `factor` times the fraction of MVC to the power of `exponent`. */
  enduranceFactor: number;
  enduranceExponent: number;
  /** From active to fatigued, a second. */
  fatigueRate: number;
  /** From fatigued to resting, a second. */
  recoveryRate: number;
  /** How many times faster recovery is while nothing is held. */
  restMultiplier: number;
}

/**
 * Published numbers by joint.
 * @source endurance: Frey Law & Avin 2010, Ergonomics 53:109, table 2. Rates: Frey-Law, Looft & Heitsman 2012, J Biomech 45:1803, table 1
 * (its abstract pairs two rows wrongly; the table is followed). Rest multiplier: Looft, Herkert & Frey-Law 2018, J Biomech 77:16.
 */
export const jointFatigue = {
  shoulder: row(14.86, -1.83, 0.0182, 0.001_68, 15),
  elbow: row(17.98, -2.21, 0.009_12, 0.000_94, 15),
  grip: row(33.55, -1.61, 0.0098, 0.000_64, 30),
  general: row(21.92, -1.98, 0.0097, 0.000_91, 15),
} as const;

/** A joint with published numbers; `general` is all joints together. */
export type Joint = keyof typeof jointFatigue;

function row(
  ...[enduranceFactor, enduranceExponent, fatigueRate, recoveryRate, restMultiplier]: [
    enduranceFactor: number,
    enduranceExponent: number,
    fatigueRate: number,
    recoveryRate: number,
    restMultiplier: number,
  ]
): JointFatigue {
  return { enduranceFactor, enduranceExponent, fatigueRate, recoveryRate, restMultiplier };
}

/**
 * The published numbers of one joint.
 * @param joint its name
 * @returns its numbers
 * @throws RangeError when there is no such joint
 */
export function fatigueOf(joint: Joint): JointFatigue {
  if (!Object.hasOwn(jointFatigue, joint))
    throw new RangeError(`joint is '${joint}'; expected one of ${Object.keys(jointFatigue).join(', ')}`);
  return jointFatigue[joint];
}
