import { fatigueOf, type Joint } from './joint.ts';

/**
 * How long the three-compartment model holds a steady pull from fresh: the closed form, in which the active share is the load at once.
 * @param fractionOfMvc the pull, more than 0, at most 1
 * @param joint default shoulder
 * @returns seconds; undefined when recovery keeps up and the model holds for ever
 * @throws RangeError when the fraction is out of range or there is no such joint
 * @source Xia & Frey-Law 2008, J Biomech 41:3046, solved for a constant load: -ln(1 - R (1 - TL) / (F TL)) / R
 */
export function sustainedHoldSeconds(fractionOfMvc: number, joint: Joint = 'shoulder'): number | undefined {
  if (!(fractionOfMvc > 0 && fractionOfMvc <= 1))
    throw new RangeError(`fractionOfMvc is ${fractionOfMvc}; expected a number above 0 and up to 1`);
  const { fatigueRate, recoveryRate } = fatigueOf(joint);
  const left = 1 - (recoveryRate * (1 - fractionOfMvc)) / (fatigueRate * fractionOfMvc);
  return left > 0 ? Math.max(0, -Math.log(left) / recoveryRate) : undefined;
}
