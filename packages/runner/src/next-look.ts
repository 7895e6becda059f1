import type { SessionView } from '@larkhold/engine';
import { CALL_BACK_MS, UNNOTICED_MS } from './time-watch.ts';

/** In this many pieces the light goes along the string in a hold: from across a room none is seen alone. */
const LIGHT_PIECES = 200;
/** How long one piece stays at the least and at the most, milliseconds. */
const LEAST_PIECE_MS = 33;
const MOST_PIECE_MS = 100;
/** How often a drill that nobody hears is looked at near a draw, so that a page that hangs is noticed, milliseconds. */
const SILENT_MS = UNNOTICED_MS / 4;
/** From how long before a draw. A look a second early, and late by as much again, must still come before such a wait counts. */
const SILENT_FROM_MS = CALL_BACK_MS + 2 * UNNOTICED_MS;

/**
 * When a drill has to be looked at again. While the bow is at rest the machine has nothing to do: only a bow in movement needs every picture.
 * @param view where it is
 * @param options `nextCueMs`: how long until the next cue; `isSilent`: nothing is heard
 * @returns milliseconds from now, 0 for the next picture; undefined while nothing runs
 */
export function nextLookMs(
  { state, step, msLeft, stepMs }: Pick<SessionView, 'state' | 'step' | 'msLeft' | 'stepMs'>,
  options: { nextCueMs: number | undefined; isSilent: boolean },
): number | undefined {
  if (state !== 'running' || step === undefined) return undefined;
  if (step.kind === 'draw' || step.kind === 'letDown') return 0;
  const { nextCueMs = Number.POSITIVE_INFINITY, isSilent } = options;
  const next = Math.min(untilNextSecond(msLeft), nextCueMs);
  if (step.kind === 'hold') return Math.max(0, Math.min(pieceMs(stepMs), next));
  return Math.max(0, isSilent && msLeft < SILENT_FROM_MS ? Math.min(SILENT_MS, next) : next);
}

/**
 * Whether a drill looks otherwise than it did.
 * @param before where it was when it was last drawn
 * @param view where it is
 * @returns false where drawing it again would change nothing
 */
export function looksOtherwise(before: SessionView, view: SessionView): boolean {
  const { state, step, msLeft } = view;
  if (state !== before.state || step !== before.step || view.stepMs !== before.stepMs) return true;
  if (state !== 'running') return msLeft !== before.msLeft;
  if (step?.kind === 'draw' || step?.kind === 'letDown') return true;
  const gridMs = step?.kind === 'hold' ? pieceMs(view.stepMs) : 1000;
  return Math.ceil(msLeft / gridMs) !== Math.ceil(before.msLeft / gridMs);
}

/** The number changes as a whole second is over. */
function untilNextSecond(msLeft: number): number {
  return msLeft - (Math.ceil(msLeft / 1000 - 1e-6) - 1) * 1000;
}

function pieceMs(holdMs: number): number {
  return Math.min(MOST_PIECE_MS, Math.max(LEAST_PIECE_MS, holdMs / LIGHT_PIECES));
}
