import type { BlockRules } from './block-rules.ts';
import { type Dose, halfSeconds, leastHold, totalSeconds } from './dose.ts';
import { afterLayoff } from './layoff.ts';

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

/** Where a block stands. Replayed from the records, never stored. */
export interface BlockState {
  /** Whether a drill of this program ever had the block. */
  isBegun: boolean;
  /** Its place on the path. */
  level: number;
  /** What is worked with now: nowhere above the place. */
  dose: Dose;
  /** The hold that a rest of so many times the hold counts by: a shorter hold does not shorten the rest. */
  restHold: number;
  /** Rests as a multiple of the file's, where failing went on. */
  restFactor: number;
  cleanDays: number;
  /** Days in a row that failed, and that were not clean. */
  missedDays: number;
  strainedDays: number;
  hardDays: number;
  /** Times it went down since the last clean day. */
  easedTimes: number;
  /** The longest hold that was clean, less for every layoff since. */
  provenHold: number;
  /** A hold that failed: it is asked for again only after more clean days. */
  failed?: { hold: number; times: number; cleanDays: number };
  /** What was worked with before it went down, until the next drill. */
  easedFrom?: Dose;
  /** Days in a row whose reps or sets were fewer than the dose's, and on which less hold was asked for. */
  cutDays: number;
  lighterDays: number;
  move?: BlockMove;
}

/** A first bad day after good ones leaves at least so much of the hold. */
const KEPT_ON_A_BAD_DAY = 0.7;
/** Down means at least so much less. */
const DOWN = 0.85;
const STEP_LBF = 2;
/** Clean days more for every time that a hold failed, and the most of them. Own: no source. */
const MORE_CLEAN_DAYS = 2;
const MOST_MORE_CLEAN_DAYS = 8;
const LONGER_REST = 1.25;
const MOST_REST_FACTOR = 2;

/** A block that nobody has drilled. */
export function notBegun({ path }: BlockRules): BlockState {
  const foot = path[0]!;
  return {
    ...{ isBegun: false, level: 0, dose: { ...foot, addedWeight: 0 }, restHold: foot.hold, restFactor: 1 },
    ...{ cleanDays: 0, missedDays: 0, strainedDays: 0, hardDays: 0, easedTimes: 0, provenHold: 0 },
    ...{ cutDays: 0, lighterDays: 0 },
  };
}

/**
 * The place that fits what was really done: the highest whose hold, count and weight are no more.
 * @param rules the block's
 * @param hold seconds that were asked for
 * @param count reps over all sets
 * @param weight pounds-force added
 * @returns its index
 */
export function placeOf({ path }: BlockRules, hold: number, count: number, weight: number): number {
  const foot = path[0]!;
  const isCut = count < foot.reps * foot.sets;
  let found = 0;
  for (let at = 0; at < path.length; at++) {
    const place = path[at]!;
    // Beyond added weight that is not in use a ladder may come back to shorter holds.
    if (place.addedWeight > Math.max(weight, foot.addedWeight)) break;
    if (place.hold <= hold && (isCut || place.reps * place.sets <= count)) found = at;
  }
  return found;
}

/** Goes down after failing. `mostHeld` is what most reps held, `asked` what they were asked for, seconds. */
export function goDown(
  state: BlockState,
  rules: BlockRules,
  {
    cause,
    day,
    because,
    asked,
    mostHeld,
  }: { cause: EaseCause; day: number; because: number; asked: number; mostHeld: number },
): BlockState {
  const { dose } = state;
  const least = leastHold(rules.path[0]!);
  const isFirst = state.easedTimes === 0 && state.provenHold > 0;
  const reached = mostHeld < asked ? mostHeld : asked;
  const base = Math.min(dose.hold, asked);
  const wished = DOWN * Math.min(base, reached);
  // A drill that asked for clearly less than is worked with (a rest day, a lighter week) does not make the loss greater.
  // Halves of a second would round more than a third away from a short hold: tenths there.
  const isSmaller = asked < 0.98 * dose.hold && mostHeld > 0;
  const floor = isFirst || isSmaller ? Math.ceil(10 * KEPT_ON_A_BAD_DAY * dose.hold - 1e-9) / 10 : least;
  const hold = Math.min(dose.hold, Math.max(least, floor, halfSeconds(wished)));
  const isStuck = state.easedTimes > 0 || hold >= dose.hold;
  const to: Dose = {
    hold,
    ...(isStuck ? fewer(dose) : { reps: dose.reps, sets: dose.sets }),
    addedWeight: Math.max(0, dose.addedWeight - STEP_LBF),
  };
  const isNoLess = totalSeconds(to) >= totalSeconds(dose) && to.addedWeight === dose.addedWeight;
  const hard = state.failed && state.failed.hold <= asked * 1.1 ? state.failed.times : 0;
  return {
    ...state,
    dose: to,
    restHold: Math.max(state.restHold, rules.path[state.level]!.hold),
    restFactor: isStuck || isNoLess ? Math.min(MOST_REST_FACTOR, state.restFactor * LONGER_REST) : state.restFactor,
    ...{ cleanDays: 0, missedDays: 0, strainedDays: 0, hardDays: 0, easedTimes: state.easedTimes + 1 },
    failed: { hold: Math.min(asked, state.failed?.hold ?? asked), times: hard + 1, cleanDays: 0 },
    easedFrom: dose,
    move: { kind: cause, day, from: dose, to, because },
  };
}

function fewer({ reps, sets }: Dose): Pick<Dose, 'reps' | 'sets'> {
  if (reps > 1) return { reps: Math.max(1, Math.floor(reps * 0.75)), sets };
  return { reps, sets: Math.max(1, sets - 1) };
}

/** What days away leave of a block's state. */
export function layOff(state: BlockState, rules: BlockRules, day: number, days: number, isOlder: boolean): BlockState {
  if (!state.isBegun) return state;
  const to = afterLayoff(state.dose, state.level, days, rules, isOlder);
  if (isSame(to, state.dose)) return state;
  const share = to.hold / state.dose.hold;
  return {
    ...state,
    dose: to,
    level: days >= 365 ? 0 : state.level,
    restHold: Math.max(state.restHold, rules.path[state.level]!.hold),
    ...{ cleanDays: 0, missedDays: 0, strainedDays: 0, hardDays: 0 },
    provenHold: state.provenHold * share,
    easedFrom: state.easedFrom ?? state.dose,
    move: { kind: 'layoff', day, from: state.dose, to, because: days },
  };
}

function isSame(a: Dose, b: Dose): boolean {
  return a.hold === b.hold && a.reps === b.reps && a.sets === b.sets && a.addedWeight === b.addedWeight;
}

/**
 * Goes up one step: back to the place first (hold, then reps and sets, then weight), then to the next place.
 * @param state before the clean day counted
 * @param rules the block's
 * @param day days from 1970-01-01
 * @param may what stands in the way: `weight` whether more may be added, `isCut` whether reps and sets beyond today's do not fit the minutes
 * @returns the state after it; the same dose where nothing leads on
 */
export function goUp(
  state: BlockState,
  rules: BlockRules,
  day: number,
  may: { weight: boolean; isCut: boolean },
): BlockState {
  const clean = { ...state, cleanDays: state.cleanDays + 1, missedDays: 0, strainedDays: 0, hardDays: 0 };
  clean.easedTimes = 0;
  clean.restFactor = 1;
  clean.provenHold = Math.max(state.provenHold, state.dose.hold);
  clean.easedFrom = undefined;
  if (state.failed) {
    const isOvercome = state.dose.hold >= state.failed.hold;
    clean.failed = isOvercome ? undefined : { ...state.failed, cleanDays: state.failed.cleanDays + 1 };
  }
  const next = stepUp(clean, rules, may);
  if (!next) return clean;
  const needed = next.dose.hold <= clean.provenHold && next.level === state.level ? 1 : rules.cleanSessions;
  if (clean.cleanDays < needed) return clean;
  const { failed } = clean;
  if (failed && next.dose.hold >= failed.hold && failed.cleanDays < neededAfter(failed.times, rules)) return clean;
  return {
    ...clean,
    ...next,
    cleanDays: 0,
    restHold: rules.path[next.level]!.hold,
    move: {
      kind: next.level > state.level ? 'climb' : 'recover',
      ...{ day, from: state.dose, to: next.dose, because: clean.cleanDays },
    },
  };
}

/** Clean days before a hold that failed is asked for again. */
export function neededAfter(times: number, { cleanSessions }: BlockRules): number {
  return cleanSessions + Math.min(MOST_MORE_CLEAN_DAYS, MORE_CLEAN_DAYS * times);
}

/** The next step up from a dose, if there is one. */
export function stepUp(
  { level, dose }: Pick<BlockState, 'level' | 'dose'>,
  { path }: BlockRules,
  may: { weight: boolean; isCut: boolean },
): { level: number; dose: Dose } | undefined {
  const place = path[level]!;
  if (dose.hold < place.hold) {
    const step = Math.max(dose.hold < 5 ? 0.5 : 1, halfSeconds(dose.hold * 0.12));
    // The last step may be half as long again: a place that is missed by half a second is not worth a day.
    const hold = dose.hold + 1.5 * step >= place.hold ? place.hold : dose.hold + step;
    return { level, dose: { ...dose, hold } };
  }
  if (dose.reps * dose.sets < place.reps * place.sets && !may.isCut) {
    const reps = Math.min(place.reps, dose.reps + Math.max(1, Math.floor(dose.reps * 0.2)));
    const sets = dose.reps < place.reps ? dose.sets : Math.min(place.sets, dose.sets + 1);
    return { level, dose: { ...dose, reps, sets } };
  }
  if (dose.addedWeight < place.addedWeight && may.weight) {
    return { level, dose: { ...dose, addedWeight: Math.min(place.addedWeight, dose.addedWeight + STEP_LBF) } };
  }
  return nextPlace(level, dose, path, may);
}

function nextPlace(
  level: number,
  dose: Dose,
  path: readonly Dose[],
  { weight, isCut }: { weight: boolean; isCut: boolean },
): { level: number; dose: Dose } | undefined {
  const place = path[level]!;
  for (let at = level + 1; at < path.length; at++) {
    const next = path[at]!;
    const isHeavier = next.addedWeight > place.addedWeight;
    if (isHeavier && !weight) return undefined;
    // In the minutes there are, more reps would not be seen: the next longer hold, or more weight, leads on.
    if (isCut && !isHeavier && next.hold <= place.hold) continue;
    const addedWeight = Math.min(next.addedWeight, dose.addedWeight + (isHeavier ? STEP_LBF : 0));
    return { level: at, dose: { ...next, addedWeight } };
  }
  return undefined;
}
