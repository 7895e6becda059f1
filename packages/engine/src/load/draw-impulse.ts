import type { DrillRecord } from '../journal/drill-record.ts';
import { poundsForceToNewtons } from '../units/pounds-force.ts';
import { checkNumber } from './check-number.ts';
import { holdTime } from './hold-time.ts';

/**
 * Force on the fingers times time at full draw, over one drill. Drawing and letting down are not counted.
 * @param record one drill; a removed one has none
 * @param onFingersLbf weight on the fingers at full draw, pounds-force, 0 to 200
 * @returns newton-seconds, 0 or more
 * @throws RangeError when the weight is out of range
 * @source own: impulse as mechanics defines it, so that a heavier bow and a longer hold can be given as one number
 */
export function drawImpulse(record: DrillRecord, onFingersLbf: number): number {
  return poundsForceToNewtons(checkNumber('onFingersLbf', onFingersLbf, 0, 200)) * holdTime([record]);
}
