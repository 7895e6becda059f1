import type { Outcome, RepRecord } from './rep-record.ts';

/** What is read of a rep here. */
type SeenRep = Pick<RepRecord, 'seen' | 'heldMs' | 'prescribedMs' | 'outcome'>;

/** Clock and camera differ by more than this: worth asking the archer, milliseconds. */
export const DISAGREEMENT_MS = 500;

/**
 * How long a rep was held: as it was seen where it was seen, else as the clock has it. Never more than was prescribed, and nothing for a rep
 * of which nobody can say how it ended.
 * @param rep what is known of it
 * @returns milliseconds at full draw
 * @source own: a camera that saw both ends knows better than a clock that assumes them; to the safe side beyond what was prescribed
 */
export function trueHeldMs({ seen, heldMs, prescribedMs, outcome }: SeenRep): number {
  if (seen === undefined || outcome === 'skipped' || outcome === 'unsure') return heldMs;
  return Math.max(0, Math.min(seen.toMs - seen.fromMs, prescribedMs));
}

/**
 * Of a rep's time at full draw, what is the camera's word and not the clock's.
 * @param rep what is known of it
 * @returns milliseconds; 0 where it was not seen
 */
export function seenHeldMs(rep: SeenRep): number {
  const { seen, outcome } = rep;
  return seen === undefined || outcome === 'skipped' || outcome === 'unsure' ? 0 : trueHeldMs(rep);
}

/**
 * How far the clock and the camera are apart on a rep.
 * @param rep what is known of it
 * @returns what was seen less what the clock says, milliseconds; 0 where it was not seen
 */
export function disagreementMs(rep: SeenRep): number {
  return trueHeldMs(rep) - rep.heldMs;
}

/**
 * How a rep ended, as far as a camera knows better than the clock: who let down before the end was short, and of a hold that began late nobody
 * can say that it was held in full.
 * @param rep what is known of it
 * @returns the outcome; the clock's where it was not seen, or where the two are less than half a second apart
 * @source own: to the safe side, nothing is built on a full hold that was not seen
 */
export function trueOutcome(rep: SeenRep): Outcome {
  const { seen, outcome, heldMs, prescribedMs } = rep;
  if (seen === undefined || outcome !== 'held' || trueHeldMs(rep) >= prescribedMs - DISAGREEMENT_MS) return outcome;
  return heldMs - seen.toMs > DISAGREEMENT_MS ? 'short' : 'unsure';
}

/**
 * How long a hold stayed whole: nothing had moved since the anchor.
 * @param rep what is known of it
 * @returns milliseconds, no more than was held; undefined where no camera could judge its form
 */
export function wholeHeldMs(rep: SeenRep): number | undefined {
  const wholeMs = rep.seen?.wholeMs;
  return wholeMs === undefined ? undefined : Math.min(wholeMs, trueHeldMs(rep));
}
