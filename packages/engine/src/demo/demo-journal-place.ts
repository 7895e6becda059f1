import type { Block, Lever } from '../program/program.ts';

/** Where the invented archer stands with one block: each lever's value, and what leads to the next. */
export interface DemoPlace {
  values: Record<Lever, number>;
  /** Values before each climb, the last one on top. */
  below: Record<Lever, number>[];
  cleanInRow: number;
}

/**
 * The foot of a block's ladder.
 * @param block of a program
 * @returns its own values
 */
export function startPlace(block: Block): DemoPlace {
  const { hold, reps, sets, addedWeight } = block;
  return { values: { hold, reps, sets, addedWeight }, below: [], cleanInRow: 0 };
}

/**
 * What a session does to the place: enough clean ones in a row climb, one with too many misses steps down.
 * @param place changed in place
 * @param block whose ladder it is
 * @param missedShare of the session's reps, 0 to 1
 * @param isEasy whether effort and pain allow a climb
 */
export function movePlace(place: DemoPlace, block: Block, missedShare: number, isEasy: boolean): void {
  const { ladder } = block;
  if (ladder === undefined) return;
  if (missedShare >= ladder.stepDownAfter.missedShare) stepDown(place, 1);
  else if (missedShare > 0) place.cleanInRow = 0;
  else if (isEasy) place.cleanInRow += 1;
  if (place.cleanInRow < ladder.climbAfter.cleanSessions) return;
  place.cleanInRow = 0;
  const rung = ladder.rungs.find(({ raise, until }) => place.values[raise] < until);
  if (rung === undefined) return;
  place.below.push(place.values);
  const raised = Math.min(rung.until, place.values[rung.raise] + rung.by);
  place.values = { ...place.values, ...rung.resets, [rung.raise]: raised };
}

/**
 * Goes back down.
 * @param place changed in place
 * @param steps how many
 */
export function stepDown(place: DemoPlace, steps: number): void {
  for (let step = 0; step < steps; step++) place.values = place.below.pop() ?? place.values;
  place.cleanInRow = 0;
}
