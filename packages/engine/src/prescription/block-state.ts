import type { BlockRules } from './block-rules.ts';
import type { Dose } from './dose.ts';

/** Why a block's dose is below its place. */
export type EaseCause = 'stepDown' | 'effort' | 'layoff' | 'pain';

/** The last thing that moved a block. */
export interface BlockMove {
  kind: 'begin' | 'climb' | 'recover' | EaseCause;
  /** Days from 1970-01-01. */
  day: number;
  from: Dose;
  to: Dose;
  /** Clean days, failed days, or days away that caused it. */
  because: number;
}

/** How far a block has come. Replayed from the records, never stored. */
export interface BlockState {
  /** Whether a drill of this program ever had the block. */
  isBegun: boolean;
  /** Its place on the path. */
  level: number;
  /** What is worked with now: nowhere above the place. */
  dose: Dose;
  /** The hold by which a rest counts that is a multiple of the hold: a shorter hold does not shorten the rest. */
  restHold: number;
  /** Rests as a multiple of the file's, where failing went on. */
  restFactor: number;
  cleanDays: number;
  /** Days in a row that failed, that were not clean, and that were hard; half of one where a clean drill of fewer reps has come since. */
  missedDays: number;
  strainedDays: number;
  hardDays: number;
  /** Times it went down since the last day on which everything was held. */
  easedTimes: number;
  /** The longest hold that was clean and is still believed; less for every layoff since. */
  provenHold: number;
  /** A proven hold that failed once. Failing again before it was held, it is proven no longer. */
  doubtedHold?: number;
  /** A hold that failed: it is asked for again only after more clean days. */
  failed?: { hold: number; times: number; cleanDays: number };
  /** What was worked with before it went down, until the next drill. */
  easedFrom?: Dose;
  /** What was worked with before days away, and the days with everything held that lead back to it. */
  back?: { dose: Dose; days: number };
  /** Days in a row whose reps or sets were fewer than the dose's. */
  cutDays: number;
  /** Days on which everything was held of a drill too small or too short to climb by, since the last step. */
  smallDays: number;
  /** Days in a row on which less hold was asked for than is worked with, of more than one rep, and held. */
  lighterDays: number;
  move?: BlockMove;
}

/** A block that nobody has drilled. */
export function notBegun({ path }: BlockRules): BlockState {
  const foot = path[0]!;
  return {
    ...{ isBegun: false, level: 0, dose: { ...foot, addedWeight: 0 }, restHold: foot.hold, restFactor: 1 },
    ...{ cleanDays: 0, missedDays: 0, strainedDays: 0, hardDays: 0, easedTimes: 0, provenHold: 0 },
    ...{ cutDays: 0, smallDays: 0, lighterDays: 0 },
    ...{ doubtedHold: undefined, failed: undefined, easedFrom: undefined, back: undefined, move: undefined },
  };
}

/**
 * A copy, its maker's own to change. Key by key: ten years are thousands of copies, and to spread all the keys takes several times as long.
 * @param state any
 * @returns the same
 */
export function copyOf(state: BlockState): BlockState {
  const copy: { [K in keyof Required<BlockState>]: BlockState[K] } = {
    isBegun: state.isBegun,
    level: state.level,
    dose: state.dose,
    restHold: state.restHold,
    restFactor: state.restFactor,
    cleanDays: state.cleanDays,
    missedDays: state.missedDays,
    strainedDays: state.strainedDays,
    hardDays: state.hardDays,
    easedTimes: state.easedTimes,
    provenHold: state.provenHold,
    cutDays: state.cutDays,
    smallDays: state.smallDays,
    lighterDays: state.lighterDays,
    doubtedHold: state.doubtedHold,
    failed: state.failed,
    easedFrom: state.easedFrom,
    back: state.back,
    move: state.move,
  };
  return copy;
}

/**
 * The place that fits what was really done: the highest whose hold, count and weight are no more. A drill of fewer reps than the foot's was cut: it counts
 * as the foot's, and never as the top of a ladder of reps.
 * @param rules the block's
 * @param hold seconds that were asked for
 * @param count reps over all sets
 * @param weight pounds-force added
 * @returns its index
 */
export function placeOf({ path }: BlockRules, hold: number, count: number, weight: number): number {
  const foot = path[0]!;
  const most = Math.max(count, foot.reps * foot.sets);
  let found = 0;
  for (let at = 0; at < path.length; at++) {
    const place = path[at]!;
    // Beyond added weight that is not in use a ladder may come back to shorter holds.
    if (place.addedWeight > Math.max(weight, foot.addedWeight)) break;
    if (place.hold <= hold && place.reps * place.sets <= most) found = at;
  }
  return found;
}
