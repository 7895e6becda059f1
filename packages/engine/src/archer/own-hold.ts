import type { MaxHoldEstimate } from './estimate-max-hold.ts';

/** What is known of the archer's longest hold, with the journal's own estimate beside it. Seconds. */
export type OwnHold =
  | { kind: 'said'; seconds: number; estimate: MaxHoldEstimate }
  | { kind: 'estimated'; seconds: number; lowSeconds: number; highSeconds: number; estimate: MaxHoldEstimate }
  | { kind: 'unknown'; estimate: MaxHoldEstimate };

/**
 * The archer's longest hold: as they say, else as the journal tells it.
 * @param estimate what the journal tells, as `estimateMaxHold` gives it
 * @param saidSeconds the archer's own word, seconds; absent where they gave none
 * @returns what is known
 * @source own: who says what they hold has measured it, or knows of an estimate that is wrong
 * @example ownHold(estimateMaxHold([], builtInPrograms, '2026-11-25'), 38).kind // 'said'
 */
export function ownHold(estimate: MaxHoldEstimate, saidSeconds?: number): OwnHold {
  if (saidSeconds !== undefined) return { kind: 'said', seconds: saidSeconds, estimate };
  if (estimate.kind === 'too little data') return { kind: 'unknown', estimate };
  const { seconds, lowSeconds, highSeconds } = estimate;
  return { kind: 'estimated', seconds, lowSeconds, highSeconds, estimate };
}

/**
 * Whether the drills of the last weeks can't be made to fit with what the archer says.
 * @param own what is known
 * @returns true where what was said lies outside the journal's range
 * @example isAtOdds(ownHold(estimateMaxHold([], builtInPrograms, '2026-11-25'), 38)) // false
 */
export function isAtOdds(own: OwnHold): boolean {
  if (own.kind !== 'said' || own.estimate.kind !== 'estimate') return false;
  return own.seconds < own.estimate.lowSeconds || own.seconds > own.estimate.highSeconds;
}

/**
 * The longest hold by which an outlook is made.
 * @param own what is known
 * @returns seconds, and the ends of what it may be: none where it was said; undefined where nothing is known
 * @example longestOf(ownHold(estimateMaxHold([], builtInPrograms, '2026-11-25'), 38)) // { seconds: 38, ends: [] }
 */
export function longestOf(own: OwnHold): { seconds: number; ends: readonly number[] } | undefined {
  if (own.kind === 'unknown') return undefined;
  return { seconds: own.seconds, ends: own.kind === 'estimated' ? [own.lowSeconds, own.highSeconds] : [] };
}
