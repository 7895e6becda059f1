import type { RepRecord } from './rep-record.ts';

/** Clock and camera differ by more than this: worth asking the archer, milliseconds. */
export const DISAGREEMENT_MS = 500;

/**
 * How long a rep was held: as it was seen where it was seen, else as the clock has it. Never more than was prescribed, and nothing for a rep
 * of which nobody can say how it ended.
 * @param rep what is known of it
 * @returns milliseconds at full draw
 * @source own: a camera that saw both ends knows better than a clock that assumes them; to the safe side beyond what was asked for
 */
export function trueHeldMs({ seen, heldMs, prescribedMs, outcome }: RepRecord): number {
  if (seen === undefined || outcome === 'skipped' || outcome === 'unsure') return heldMs;
  return Math.max(0, Math.min(seen.toMs - seen.fromMs, prescribedMs));
}

/**
 * How far the clock and the camera are apart on a rep.
 * @param rep what is known of it
 * @returns what was seen less what the clock says, milliseconds; 0 where it was not seen
 */
export function disagreementMs(rep: RepRecord): number {
  return trueHeldMs(rep) - rep.heldMs;
}
