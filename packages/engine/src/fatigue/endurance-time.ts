import { fatigueOf, type Joint } from './joint.ts';

/**
 * How long people hold a steady pull, by experiment. Single people differ from it by 29 to 47 % (95 % prediction interval).
 * @param fractionOfMvc the pull as a fraction of the most they can pull: more than 0, at most 1
 * @param joint default shoulder
 * @returns seconds
 * @throws RangeError when the fraction is out of range (at 0 nothing is held and there is no end), or there is no such joint
 * @source Frey Law & Avin 2010, Ergonomics 53:109, table 2
 */
export function enduranceTime(fractionOfMvc: number, joint: Joint = 'shoulder'): number {
  // Below a millionth nothing is held, and the power would leave the range of numbers.
  if (!(fractionOfMvc >= 1e-6 && fractionOfMvc <= 1))
    throw new RangeError(`fractionOfMvc is ${fractionOfMvc}; expected a number above 0 and up to 1`);
  const { enduranceFactor, enduranceExponent } = fatigueOf(joint);
  return enduranceFactor * fractionOfMvc ** enduranceExponent;
}
