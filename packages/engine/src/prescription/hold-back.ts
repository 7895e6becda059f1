import { climbAfterPain } from './after-pain.ts';
import { doseOf, withDose } from './block-dose.ts';
import { capToLast } from './cap-to-last.ts';
import { fewestOf } from './dose.ts';
import type { KnownToday } from './known-today.ts';
import { limitGrowth } from './limit-growth.ts';
import type { PrescribedBlock } from './prescription.ts';
import type { Reason } from './reason.ts';

/**
 * Holds an eased day to what the limits leave of the full day: weekly growth, the last five drills while anything eases, and the climb after pain.
 * The limits read the full day's holds, and no hold, count of reps or weight may be above what they leave: a shorter hold makes no room for more reps, so that with more
 * days away nothing rises.
 * @param eased today's blocks
 * @param full the day before anything eased
 * @param known everything that is known today
 * @param isEased whether anything eases
 * @returns the blocks, with the rests of the limits; what the limits left of the full day; and the reasons where they acted
 */
export function holdBack(
  eased: PrescribedBlock[],
  full: PrescribedBlock[],
  known: KnownToday,
  isEased: boolean,
): { blocks: PrescribedBlock[]; most: PrescribedBlock[]; reasons: Reason[] } {
  const limits = isEased ? [limitGrowth, capToLast, climbAfterPain] : [limitGrowth, climbAfterPain];
  let most = full;
  let blocks = eased;
  const reasons: Reason[] = [];
  for (const limit of limits) {
    const { blocks: left, reasonsFor } = limit(most, known);
    if (left === most) continue;
    const next = nowhereMore(blocks, left);
    reasons.push(...(reasonsFor?.(blocks, next) ?? []));
    most = left;
    blocks = next;
  }
  return { blocks, most, reasons };
}

/**
 * Nowhere more than either.
 * @param blocks today's
 * @param most what is left of the same program's blocks; its rests are used
 * @returns the blocks that both have
 */
export function nowhereMore(blocks: readonly PrescribedBlock[], most: readonly PrescribedBlock[]): PrescribedBlock[] {
  return most.flatMap((limit) => {
    const block = blocks.find((one) => one.block === limit.block);
    return block ? [withDose(limit, fewestOf(doseOf(block), doseOf(limit)))] : [];
  });
}
