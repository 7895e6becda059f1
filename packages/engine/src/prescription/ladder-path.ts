import { type Block, type Ladder, type Lever, leverRanges } from '../program/program.ts';

/** The value of each lever at one place on a ladder: seconds, counts, pounds-force. */
export type LeverValues = Readonly<Record<Lever, number>>;

/** No ladder is climbed more often than this; five years of daily climbs are fewer. */
export const mostClimbs = 2000;

/**
 * Every place on a block's ladder, from its foot to its top.
 *
 * A climb raises the first rung that has not reached its `until`; a rung with `resets` sets earlier levers back, so that they are climbed
 * again before it climbs on. A ladder that contradicts itself and comes round to a place it has been at ends there.
 * @param block the block as its file says
 * @param ladder its ladder, if it has one
 * @returns at least one place, the block's own values
 */
export function ladderPath(block: Block, ladder: Ladder | undefined = block.ladder): LeverValues[] {
  return walkLadder(block, ladder).path;
}

/**
 * The same, and whether the ladder goes on above the last place that is counted.
 * @param block the block as its file says
 * @param ladder its ladder, if it has one
 * @returns the places, foot first; `isCut` where there are more than can be climbed in years
 */
export function walkLadder(
  block: Block,
  ladder: Ladder | undefined = block.ladder,
): { path: LeverValues[]; isCut: boolean } {
  let place: LeverValues = { hold: block.hold, reps: block.reps, sets: block.sets, addedWeight: block.addedWeight };
  const path = [place];
  const seen = new Set([keyOf(place)]);
  while (ladder && path.length <= mostClimbs) {
    const above = climb(place, ladder);
    if (!above || seen.has(keyOf(above))) return { path, isCut: false };
    place = above;
    seen.add(keyOf(place));
    path.push(place);
  }
  return { path, isCut: ladder !== undefined };
}

function climb(place: LeverValues, ladder: Ladder): LeverValues | undefined {
  const rung = ladder.rungs.find(({ raise, until }) => place[raise] < until);
  if (!rung) return undefined;
  const raised = Math.min(rung.until, leverRanges[rung.raise].most, toTenths(place[rung.raise] + rung.by));
  const next: Record<Lever, number> = { ...place, [rung.raise]: raised };
  if (!rung.resets) return next;
  for (const [lever, value] of Object.entries(rung.resets) as [Lever, number | undefined][]) {
    if (value !== undefined && lever !== rung.raise) next[lever] = value;
  }
  return next;
}

/** Tenths are the finest step a program knows; adding decimals must not drift from them. */
function toTenths(value: number): number {
  return Math.round(value * 10) / 10;
}

function keyOf({ hold, reps, sets, addedWeight }: LeverValues): string {
  return `${hold} ${reps} ${sets} ${addedWeight}`;
}
