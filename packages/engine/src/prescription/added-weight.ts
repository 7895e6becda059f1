import type { Archer } from '../archer/archer.ts';
import type { BodyDay } from '../archer/body-state.ts';
import type { Program } from '../program/program.ts';

/** In how many first days none is added, and how many days two steps are apart, over all programs. Own, careful: no source. */
export const WEIGHT_DAYS = 14;
/** The most that is added unless a coach's file says otherwise: 5 lb (tradgang.com), and a fifth of the bow (improveyourarchery.com). */
export const MOST_ADDED_LBF = 5;
const MOST_ADDED_SHARE = 0.2;
/** Weight rises by this at most, pounds-force. Own, careful: no source. */
export const WEIGHT_STEP_LBF = 2;

/** No weight is added before this age, whatever a file says. Own, careful: no source. */
const WEIGHT_FROM_YEARS = 16;

/** The added weight that is in use in one program, and the day on which it last rose. */
export interface WeightInUse {
  lbf: number;
  raisedDay?: number;
}

/**
 * Whether weight may rise on a day.
 * @param body everything that was drawn
 * @param own the program's own weight
 * @param day days from 1970-01-01
 * @returns false in the first fourteen days, and for two weeks after any rise
 */
export function mayRaiseWeight(body: BodyDay, own: WeightInUse, day: number): boolean {
  if (body.firstDay === undefined || day - body.firstDay < WEIGHT_DAYS) return false;
  const raised = Math.max(body.weight.raisedDay ?? Number.NEGATIVE_INFINITY, own.raisedDay ?? Number.NEGATIVE_INFINITY);
  return day - raised >= WEIGHT_DAYS;
}

/** The weight of a day: what is wished, but no rise that may not be. */
export function weightOn(wishedLbf: number, body: BodyDay, own: WeightInUse, day: number): number {
  if (wishedLbf <= own.lbf) return wishedLbf;
  return mayRaiseWeight(body, own, day) ? Math.min(wishedLbf, own.lbf + WEIGHT_STEP_LBF) : own.lbf;
}

/** Whether an archer is too young for any added weight. */
export function isTooYoungForWeight(ageYears: number | undefined): ageYears is number {
  return ageYears !== undefined && ageYears < WEIGHT_FROM_YEARS;
}

/** The most weight a program may add for an archer, pounds-force. */
export function mostAddedLbf({ author }: Program, { onFingersLbf, ageYears }: Archer): number {
  if (isTooYoungForWeight(ageYears)) return 0;
  if (author !== undefined) return Number.POSITIVE_INFINITY;
  return Math.min(MOST_ADDED_LBF, onFingersLbf === undefined ? MOST_ADDED_LBF : MOST_ADDED_SHARE * onFingersLbf);
}
