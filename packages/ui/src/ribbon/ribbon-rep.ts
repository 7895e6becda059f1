import {
  DISAGREEMENT_MS,
  disagreementMs,
  type Outcome,
  type RepRecord,
  trueHeldMs,
  trueOutcome,
} from '@larkhold/engine';

/** Why a rep was let down early, where the archer said so. */
export type ShortReason = 'form' | 'tired' | 'interrupted';

/** One rep of a hold ribbon: a rep of a record, or one that is still to come or under way. */
export interface RibbonRep extends Pick<RepRecord, 'block' | 'set' | 'prescribedMs' | 'heldMs' | 'seen'> {
  outcome: Outcome | 'coming' | 'now';
  why?: ShortReason;
}

/**
 * Whether nobody would ask about this rep: held, or not done yet.
 * @param rep of a ribbon
 * @returns false for a short, skipped or unsure one, and for one on which camera and clock are apart, or in which something moved
 */
export function isAsAsked(rep: RibbonRep): boolean {
  const { outcome, seen } = rep;
  return outcome === 'coming' || outcome === 'now' || (outcome === 'held' && !isApart(rep) && !seen?.moved?.length);
}

/**
 * A rep as it is drawn: as a camera saw it where one did, like the sums beside it.
 * @param rep of a ribbon
 * @returns the same rep where it was not seen
 */
export function drawnRep(rep: RibbonRep): RibbonRep {
  const { outcome } = rep;
  if (rep.seen === undefined || outcome === 'coming' || outcome === 'now') return rep;
  const logged = { ...rep, outcome };
  return { ...rep, heldMs: trueHeldMs(logged), outcome: trueOutcome(logged) };
}

/**
 * Whether a camera and the clock are more than half a second apart on a rep.
 * @param rep of a ribbon
 * @returns false where it was not seen
 */
export function isApart({ outcome, ...rep }: RibbonRep): boolean {
  if (outcome === 'coming' || outcome === 'now') return false;
  return Math.abs(disagreementMs({ ...rep, outcome })) > DISAGREEMENT_MS;
}
