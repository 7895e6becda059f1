import { WEIGHT_STEP_LBF } from './added-weight.ts';
import type { BlockRules } from './block-rules.ts';
import { type BlockState, copyOf, type EaseCause } from './block-state.ts';
import { type Dose, halfSeconds, isSameDose, leastHold, leastOf, mostOf, shrink, totalSeconds } from './dose.ts';
import { afterLayoff, LAYOFF_FROM_DAYS, LEAST_KEEP, YEAR_AWAY_DAYS } from './layoff.ts';

/** A first bad day after good ones leaves at least so much of the hold, and a second one running. Own: the law says a third at most. */
const KEPT_ON_A_BAD_DAY = 0.7;
const KEPT_ON_A_SECOND = 0.5;
/** Down means at least so much less. */
const DOWN = 0.85;
/** Clean days more for every time that a hold failed, and the most of them. Own: no source. */
const MORE_CLEAN_DAYS = 2;
const MOST_MORE_CLEAN_DAYS = 8;
/** Clean days before a proven hold that failed once is asked for again, and for each step back up to a place that was climbed to before. */
const PROVEN_CLEAN_DAYS = 3;
const RECOVER_CLEAN_DAYS = 2;
/** Days of small or shorter drills, all held, for one step back up to what was proven. */
const SMALL_DAYS = 3;
const LIGHTER_DAYS = 2;
const LIGHTER_KEEP = 0.5;
const NEARLY = 0.98;
/** Two weeks away, and two drills lead back. */
const DAYS_AWAY_A_DRILL = 3.5;
/** Added to how many times as long a rest is, for every time that failing went on: 1.25, 1.5, 1.75, 2. */
const LONGER_REST = 0.25;
const MOST_REST_FACTOR = 2;

/** What limits a step up: `weight` whether more may be added, `isCut` whether reps and sets beyond today's do not fit the minutes. */
export interface May {
  weight: boolean;
  isCut: boolean;
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
  const { dose, easedTimes } = state;
  const reached = Math.min(mostHeld, asked, dose.hold);
  // Tenths for the floor: halves of a second would round more than a third away from a short hold.
  const floor = Math.ceil(10 * keptHold(state, asked, mostHeld) - 1e-9) / 10;
  const hold = Math.min(dose.hold, Math.max(leastHold(rules.path[0]!), floor, halfSeconds(DOWN * reached)));
  const isStuck = easedTimes > 1 || hold >= dose.hold;
  const to: Dose = {
    hold,
    ...(isStuck
      ? fewer(dose, hold <= leastHold(rules.path[0]!) ? undefined : rules.path[state.level]!)
      : { reps: dose.reps, sets: dose.sets }),
    addedWeight: Math.max(0, dose.addedWeight - WEIGHT_STEP_LBF),
  };
  const isNoLess = totalSeconds(to) >= totalSeconds(dose) && to.addedWeight === dose.addedWeight;
  return Object.assign(copyOf(state), {
    dose: to,
    restHold: Math.max(state.restHold, rules.path[state.level]!.hold),
    restFactor: isStuck || isNoLess ? Math.min(MOST_REST_FACTOR, state.restFactor + LONGER_REST) : state.restFactor,
    ...{ cleanDays: 0, missedDays: 0, strainedDays: 0, hardDays: 0, smallDays: 0, easedTimes: easedTimes + 1 },
    ...believedAfter(state, asked, hold),
    easedFrom: dose,
    // One bad day does not undo the way back from days away.
    back: easedTimes === 0 ? state.back : undefined,
    move: { kind: cause, day, from: dose, to, because },
  });
}

/** The least that failing leaves of the hold: one bad day is not the end of what was built, and only failing on and on goes far down. */
function keptHold({ dose, easedTimes, provenHold }: BlockState, asked: number, mostHeld: number): number {
  // A drill that asked for clearly less than is worked with (a rest day, a lighter week) does not make the loss greater.
  const isShorter = asked < NEARLY * dose.hold && mostHeld > 0;
  if (isShorter || (easedTimes === 0 && provenHold > 0)) return KEPT_ON_A_BAD_DAY * dose.hold;
  return easedTimes === 1 && provenHold > 0 ? KEPT_ON_A_SECOND * dose.hold : 0;
}

/** What is still believed after failing: a proven hold is doubted once, and no longer proven when it fails again, or after three failures running. */
function believedAfter(
  { easedTimes, provenHold, doubtedHold, failed }: BlockState,
  asked: number,
  to: number,
): Pick<BlockState, 'provenHold' | 'doubtedHold' | 'failed'> {
  const isProven = asked <= provenHold * 1.02;
  const isDoubted = doubtedHold !== undefined && asked >= NEARLY * doubtedHold;
  const before = failed && failed.hold <= asked * 1.1 ? failed.times : 0;
  const isSlip = isProven && !isDoubted && easedTimes === 0;
  const isOver = isProven && (isDoubted || easedTimes > 1);
  return {
    provenHold: isOver ? Math.min(provenHold, Math.max(to, DOWN * asked)) : provenHold,
    doubtedHold: isSlip ? Math.min(asked, doubtedHold ?? asked) : doubtedHold,
    failed: {
      hold: Math.min(asked, failed?.hold ?? asked),
      times: isSlip ? Math.max(1, before) : before + 1,
      cleanDays: 0,
    },
  };
}

/** Fewer reps, then sets; while a hold can still be shorter, not less than half of the place's. */
function fewer({ reps, sets }: Dose, place?: Dose): Pick<Dose, 'reps' | 'sets'> {
  const least = place ? Math.ceil(place.reps / 2) : 1;
  if (reps > 1) return { reps: Math.min(reps, Math.max(least, Math.floor(reps * 0.75))), sets };
  return { reps, sets: Math.max(place ? Math.ceil(place.sets / 2) : 1, sets - 1) };
}

/** What days away leave of a block's state. */
export function layOff(state: BlockState, rules: BlockRules, day: number, days: number, isOlder: boolean): BlockState {
  if (!state.isBegun) return state;
  const { dose, back, level } = state;
  const isYear = days >= YEAR_AWAY_DAYS;
  const before = back?.dose ?? dose;
  const away = afterLayoff(dose, level, days, rules, isOlder);
  if (away === dose) return state;
  // Being away again and again does not lead down for ever: a quarter is left of what was worked with before.
  const least = leastOf(dose, shrink(before, LEAST_KEEP, leastHold(rules.path[0]!)));
  const to = isYear ? away : { ...mostOf(away, least), addedWeight: away.addedWeight };
  if (isSameDose(to, dose)) return state;
  return Object.assign(copyOf(state), {
    dose: to,
    level: isYear ? 0 : level,
    restHold: Math.max(state.restHold, rules.path[level]!.hold),
    ...{ cleanDays: 0, missedDays: 0, strainedDays: 0, hardDays: 0, smallDays: 0 },
    provenHold: isYear ? Math.min(state.provenHold, to.hold) : state.provenHold,
    easedFrom: state.easedFrom ?? dose,
    back: isYear ? undefined : { dose: before, days: Math.max(back?.days ?? 0, daysBack(days)) },
    move: { kind: 'layoff', day, from: dose, to, because: days },
  });
}

/** Two weeks or more away ask for two to four weeks of coming back (Caterisano et al. 2019, Strength Cond J 41(3):1), at three drills a week. */
function daysBack(days: number): number {
  return Math.max(1, Math.ceil((days - LAYOFF_FROM_DAYS + 1) / DAYS_AWAY_A_DRILL));
}

/** One of the days that lead back after days away: an even share of the hold, and of reps and sets. It changes the state, its caller's own. */
function comeBack(state: BlockState, rules: BlockRules, day: number): BlockState {
  const { back, dose } = state;
  if (!back) return state;
  const share = (from: number, to: number, step: number) =>
    Math.max(from, Math.min(to, from + step * Math.ceil((to - from) / step / back.days - 1e-9)));
  const hold = share(dose.hold, back.dose.hold, 0.5);
  const to = {
    hold: isBarred(state, { ...dose, hold }, rules) ? dose.hold : hold,
    reps: share(dose.reps, back.dose.reps, 1),
    sets: share(dose.sets, back.dose.sets, 1),
    addedWeight: dose.addedWeight,
  };
  state.back = back.days > 1 ? { dose: back.dose, days: back.days - 1 } : undefined;
  if (isSameDose(to, dose)) return state;
  state.move = { kind: 'recover', day, from: dose, to, because: 1 };
  state.dose = to;
  state.cleanDays = 0;
  state.restHold = Math.max(state.restHold, to.hold);
  return state;
}

/**
 * What clean days will lead to, walked as they will be.
 * @param state where a block is; it is left as it is
 * @param rules the block's
 * @param may as for `goUp`
 * @returns how many it takes, and the dose then; undefined where nothing leads on
 */
export function nextUp(state: BlockState, rules: BlockRules, may: May): { days: number; dose: Dose } | undefined {
  const most = rules.cleanSessions + MOST_MORE_CLEAN_DAYS + (state.back?.days ?? 0);
  const now = copyOf(state);
  for (let days = 1; days <= most; days++) {
    goUp(now, rules, 0, may);
    if (now.level !== state.level || !isSameDose(now.dose, state.dose)) return { days, dose: now.dose };
  }
  return undefined;
}

/**
 * Goes up one step: back to the place first (hold, then reps and sets, then weight), then to the next place.
 * @param state before the clean day counted, the caller's own: it is changed
 * @param rules the block's
 * @param day days from 1970-01-01
 * @param may what limits it
 * @returns the state after it; the same dose where nothing leads on
 */
export function goUp(state: BlockState, rules: BlockRules, day: number, may: May): BlockState {
  const { hold } = state.dose;
  countGoodDay(state);
  state.cleanDays += 1;
  state.smallDays = 0;
  state.restFactor = 1;
  state.provenHold = Math.max(state.provenHold, hold);
  if (state.doubtedHold !== undefined && hold >= NEARLY * state.doubtedHold) state.doubtedHold = undefined;
  if (state.failed && hold >= state.failed.hold) state.failed = undefined;
  if (state.back) return comeBack(state, rules, day);
  const next = stepUp(state, rules, may);
  if (!next || state.cleanDays < cleanDaysFor(state, next, rules) || isBarred(state, next.dose, rules)) return state;
  return moveUp(state, next, rules, day, state.cleanDays);
}

/**
 * After a day on which everything was held, but of too little to climb by: it ends a row of failures, and leads back to what was proven.
 * @param state before the day, the caller's own: it is changed
 * @param rules the block's
 * @param day days from 1970-01-01
 * @param held the hold that was asked for and held, and whether it was a whole drill: only the effort kept it from being clean
 * @returns never above the place, and above what was proven only after whole drills
 */
export function holdPlace(
  state: BlockState,
  rules: BlockRules,
  day: number,
  { heldSeconds, isWhole }: { heldSeconds: number; isWhole: boolean },
): BlockState {
  countGoodDay(state);
  state.smallDays += 1;
  state.provenHold = Math.max(state.provenHold, Math.min(heldSeconds, state.dose.hold));
  if (state.back) return comeBack(state, rules, day);
  if (state.smallDays < SMALL_DAYS) return state;
  const next = stepUp(state, rules, { weight: false, isCut: false });
  const isBack = next !== undefined && next.level === state.level && (isWhole || next.dose.hold <= state.provenHold);
  if (!isBack || isBarred(state, next.dose, rules)) return state;
  const up = moveUp(state, next, rules, day, state.smallDays);
  up.smallDays = 0;
  return up;
}

/**
 * After a day on which shorter holds were asked for and held, whoever asked for them: the second running, they are what is worked with. It is no
 * failing: half of what was proven is left at the least, and what was proven stays proven.
 * @param state before the day, the caller's own: it is changed
 * @param rules the block's
 * @param asked seconds
 * @returns nowhere more than before
 */
export function takeLighter(state: BlockState, { path }: BlockRules, asked: number): BlockState {
  countGoodDay(state);
  state.lighterDays += 1;
  if (state.lighterDays < LIGHTER_DAYS) return state;
  const least = Math.max(leastHold(path[0]!), halfSeconds(LIGHTER_KEEP * Math.max(state.provenHold, path[0]!.hold)));
  state.lighterDays = 0;
  state.dose = { ...state.dose, hold: Math.min(state.dose.hold, Math.max(asked, least)) };
  return state;
}

/** Ends a row of failures. It changes the state, its caller's own. */
function countGoodDay(state: BlockState): void {
  state.missedDays = 0;
  state.strainedDays = 0;
  state.hardDays = 0;
  state.easedTimes = 0;
  state.easedFrom = undefined;
  if (state.failed) state.failed = { ...state.failed, cleanDays: state.failed.cleanDays + 1 };
}

/** Goes one step up. It changes the state, its caller's own. */
function moveUp(
  state: BlockState,
  next: { level: number; dose: Dose },
  rules: BlockRules,
  day: number,
  because: number,
): BlockState {
  const kind = next.level > state.level ? 'climb' : 'recover';
  state.move = { kind, day, from: state.dose, to: next.dose, because };
  state.level = next.level;
  state.dose = next.dose;
  state.cleanDays = 0;
  state.restHold = rules.path[next.level]!.hold;
  return state;
}

/** Clean days in a row that a step up needs: fewer on the way back to a place that was climbed to before than for a new one. */
function cleanDaysFor(
  { provenHold, level }: BlockState,
  next: { level: number; dose: Dose },
  { cleanSessions }: BlockRules,
): number {
  if (next.level !== level) return cleanSessions;
  return next.dose.hold <= provenHold ? 1 : Math.min(RECOVER_CLEAN_DAYS, cleanSessions);
}

function isBarred({ failed, provenHold }: BlockState, { hold }: Dose, rules: BlockRules): boolean {
  return failed !== undefined && hold >= failed.hold && failed.cleanDays < neededAfter(failed, provenHold, rules);
}

/** Clean days before a hold that failed is asked for again: few for one bad day with a proven hold, more for each time that it failed. */
function neededAfter(
  { hold, times }: { hold: number; times: number },
  provenHold: number,
  { cleanSessions }: BlockRules,
): number {
  if (times === 1 && hold <= provenHold * 1.02) return PROVEN_CLEAN_DAYS;
  return cleanSessions + Math.min(MOST_MORE_CLEAN_DAYS, MORE_CLEAN_DAYS * times);
}

/**
 * The next step up from a dose, if there is one. In the minutes there are, more reps would not be seen: a longer hold, or more weight, leads on, and only
 * where there is neither do reps and sets, so that nobody is stuck on a ladder of reps.
 */
export function stepUp(
  state: Pick<BlockState, 'level' | 'dose' | 'provenHold'>,
  rules: BlockRules,
  may: May,
): { level: number; dose: Dose } | undefined {
  const step = oneUp(state, rules, may);
  if (step || !may.isCut || oneUp(state, rules, { ...may, weight: true })) return step;
  return oneUp(state, rules, { ...may, isCut: false });
}

function oneUp(
  { level, dose, provenHold }: Pick<BlockState, 'level' | 'dose' | 'provenHold'>,
  { path }: BlockRules,
  may: May,
): { level: number; dose: Dose } | undefined {
  const place = path[level]!;
  if (dose.hold < place.hold) {
    // Half of the way back to what was proven; beyond it, an eighth more.
    const back = halfSeconds((Math.min(provenHold, place.hold) - dose.hold) / 2);
    const step = Math.max(dose.hold < 5 ? 0.5 : 1, halfSeconds(dose.hold * 0.12), back);
    // The last step may be half as long again: a place that is missed by half a second is not worth a day.
    const hold = dose.hold + 1.5 * step >= place.hold ? place.hold : dose.hold + step;
    return { level, dose: { hold, reps: dose.reps, sets: dose.sets, addedWeight: dose.addedWeight } };
  }
  if (dose.reps * dose.sets < place.reps * place.sets && !may.isCut) {
    const reps = Math.min(place.reps, dose.reps + Math.max(1, Math.floor(dose.reps * 0.2)));
    const sets = dose.reps < place.reps ? dose.sets : Math.min(place.sets, dose.sets + 1);
    return { level, dose: { ...dose, reps, sets } };
  }
  if (dose.addedWeight < place.addedWeight && may.weight) {
    return { level, dose: { ...dose, addedWeight: Math.min(place.addedWeight, dose.addedWeight + WEIGHT_STEP_LBF) } };
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
    if (isCut && !isHeavier && next.hold <= place.hold) continue;
    const addedWeight = Math.min(next.addedWeight, dose.addedWeight + (isHeavier ? WEIGHT_STEP_LBF : 0));
    return { level: at, dose: { hold: next.hold, reps: next.reps, sets: next.sets, addedWeight } };
  }
  return undefined;
}
