import type { Archer } from '@larkhold/engine';
import type { Kit } from './kit.ts';

/** An age of each band. No limit changes within a band. */
const yearsOf = {
  'under 12': 11,
  '12 to 15': 12,
  '16 to 17': 16,
  '18 to 49': 18,
  '50 and over': 50,
} as const satisfies Record<NonNullable<Kit['ageBand']>, number>;

/**
 * The values of the kit that limit a prescription, or that it begins with.
 * @param kit the archer's
 * @returns bow, and age, weight on the fingers and longest hold where they were said.
 */
export function archerOf({
  ageBand,
  bow,
  drawWeightLbf,
  maxHoldSeconds,
}: Pick<Kit, 'ageBand' | 'bow'> & Partial<Pick<Kit, 'drawWeightLbf' | 'maxHoldSeconds'>>): Archer {
  return {
    bow,
    ...(ageBand === undefined ? {} : { ageYears: yearsOf[ageBand] }),
    ...(drawWeightLbf === undefined ? {} : { onFingersLbf: drawWeightLbf }),
    ...(maxHoldSeconds === undefined ? {} : { longestHoldSeconds: maxHoldSeconds }),
  };
}
