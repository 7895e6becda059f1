import type { SessionView } from '@larkhold/engine';

/** How far the string stays back at set-up, as a share of the draw. Own: enough to be seen. */
export const SET_UP_RATIO = 0.14;
/** How many places the shape has where it may not move. */
const STILL_PLACES = 3;

/**
 * How far the bow on the screen is drawn at one moment.
 * @param view where the session is
 * @param options `fromSetUp`: the last let-down ended at set-up; `isStill`: the shape steps instead of moving
 * @returns 0 (string straight) to 1 (full draw)
 */
export function drawAmount(
  view: Pick<SessionView, 'step' | 'msLeft' | 'stepMs'>,
  options: { fromSetUp?: boolean; isStill?: boolean } = {},
): number {
  const { step } = view;
  const least = options.fromSetUp ? SET_UP_RATIO : 0;
  if (step === undefined) return 0;
  if (step.kind === 'hold') return 1;
  if (step.kind !== 'draw' && step.kind !== 'letDown') return least;
  let done = stepDone(view);
  if (options.isStill) done = Math.min(1, Math.floor(done * STILL_PLACES + 1) / (STILL_PLACES + 1));
  const eased = (1 - Math.cos(Math.PI * done)) / 2;
  if (step.kind === 'draw') return least + (1 - least) * eased;
  const end = step.to === 'set-up' ? SET_UP_RATIO : 0;
  return 1 - (1 - end) * eased;
}

/**
 * How much of the step under way is over.
 * @param view where the session is
 * @returns 0 to 1; 1 for a step of no length
 */
export function stepDone(view: Pick<SessionView, 'msLeft' | 'stepMs'>): number {
  if (view.stepMs <= 0) return 1;
  return Math.min(1, Math.max(0, 1 - view.msLeft / view.stepMs));
}
