import type { Outcome, RepRecord } from '@larkhold/engine';

/** Why a rep was let down early, where the archer said so. */
export type ShortReason = 'form' | 'tired' | 'interrupted';

/** One rep of a hold ribbon: a rep of a record, or one that is still to come or under way. */
export interface RibbonRep extends Pick<RepRecord, 'block' | 'set' | 'prescribedMs' | 'heldMs'> {
  outcome: Outcome | 'coming' | 'now';
  why?: ShortReason;
}

/**
 * Whether nobody would ask about this rep: held, or not done yet.
 * @param rep of a ribbon
 * @returns false for a short, skipped or unsure one
 */
export function isAsAsked({ outcome }: RibbonRep): boolean {
  return outcome === 'held' || outcome === 'coming' || outcome === 'now';
}
