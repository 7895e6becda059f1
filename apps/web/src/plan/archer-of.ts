import type { Archer } from '@larkhold/engine';
import type { Kit } from '@larkhold/store';

/** The youngest of each band that a limit could depend on: where a band spans two limits, the careful one holds. */
const youngestYears = {
  'under 13': 11,
  '13 to 15': 13,
  '16 to 17': 16,
  '18 to 49': 18,
  '50 and over': 50,
} as const satisfies Record<NonNullable<Kit['ageBand']>, number>;

/**
 * What of the kit limits a prescription.
 * @param kit the archer's
 * @returns bow, and age where it was said. "Under 13" counts as 11: the kit does not know who is 12, so the lighter limit holds.
 */
export function archerOf({ ageBand, bow }: Pick<Kit, 'ageBand' | 'bow'>): Archer {
  return ageBand === undefined ? { bow } : { bow, ageYears: youngestYears[ageBand] };
}
