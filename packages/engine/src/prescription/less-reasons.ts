import { type AskedNumber, levers } from './asked-number.ts';
import { doseOf } from './block-dose.ts';
import type { PrescribedBlock } from './prescription.ts';
import type { Reason } from './reason.ts';
import { lessFacts } from './todays-eases.ts';

/**
 * One reason for each block that was reduced.
 * @param from the blocks before
 * @param to the blocks after; one that is missing was left out, and has 0 sets
 * @param reasonFor makes a reason of what the block was and is, and of where it acted
 * @returns the reasons
 */
export function lessReasons(
  from: readonly PrescribedBlock[],
  to: readonly PrescribedBlock[],
  reasonFor: (less: ReturnType<typeof lessFacts>, where: { block: number; acts: readonly AskedNumber[] }) => Reason,
): Reason[] {
  return from.flatMap((block) => {
    const before = doseOf(block);
    const left = to.find((one) => one.block === block.block);
    const after = left ? doseOf(left) : { ...before, sets: 0, reps: 0 };
    const acts = levers.filter((lever) => before[lever] !== after[lever]);
    return acts.length === 0 ? [] : [reasonFor(lessFacts(block.title, before, after), { block: block.block, acts })];
  });
}
