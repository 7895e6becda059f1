import type { Dose } from './dose.ts';
import type { Reason, RuleFacts } from './reason.ts';
import { reasonOf } from './reason-of.ts';

/** What a limit made of a block. */
interface Took {
  fromHold?: number;
  hold?: number;
  fromReps: number;
  reps: number;
  fromSets: number;
  sets: number;
}

/**
 * Tells of limits on the full day as they act on what failing, days away or pain left of it: "10 reps instead of 12" is not true of a day that asks for
 * 9 anyway.
 * @param reasons of limits that acted on the full day
 * @param leftOf what is left of a block until its next drill, by the block's index; undefined where all of it is
 * @returns the reasons, from and to no more than what is left; without those that took nothing from it
 */
export function limitsAfterEase(reasons: readonly Reason[], leftOf: (block: number) => Dose | undefined): Reason[] {
  return reasons.flatMap((reason) => {
    const { block, acts, rule, facts } = reason;
    const left = block === undefined ? undefined : leftOf(block);
    if (!left || !('fromReps' in facts)) return [reason];
    const now = withinDose(facts as unknown as Took, left);
    if (now.hold === now.fromHold && now.reps === now.fromReps && now.sets === now.fromSets) return [];
    return [reasonOf(rule, { ...facts, ...now } as unknown as RuleFacts[typeof rule], { block, acts })];
  });
}

function withinDose({ fromHold, hold, fromReps, reps, fromSets, sets }: Took, left: Dose): Took {
  return {
    ...(hold === undefined || fromHold === undefined
      ? {}
      : { fromHold: Math.min(fromHold, left.hold), hold: Math.min(hold, left.hold) }),
    ...{ fromReps: Math.min(fromReps, left.reps), reps: Math.min(reps, left.reps) },
    ...{ fromSets: Math.min(fromSets, left.sets), sets: Math.min(sets, left.sets) },
  };
}
