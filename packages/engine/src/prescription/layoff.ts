import type { BlockRules } from './block-rules.ts';
import { type Dose, leastHold, leastOf, shrink } from './dose.ts';

/** Days without a draw, in any program, up to which nothing changes. */
export const LAYOFF_FROM_DAYS = 8;
/** After how many days away a drill begins at its foot, at the most. */
export const YEAR_AWAY_DAYS = 365;
/** The age from which it is lost faster. */
const OLDER_FROM_YEARS = 45;
// After how many days away half of the dose is left, beyond the first week; the young and those over 45. Own, careful: strength of twelve weeks' training
// was gone after twelve weeks off (UiTM record 2-s2.0-85107975043), and the loss grows with its length (Bosquet et al. 2013, Scand J Med Sci
// Sports 23:e140).
const HALF_DAYS = 28;
const OLDER_HALF_DAYS = 20;
/** However long away, so much is left of the time at full draw. */
export const LEAST_KEEP = 0.25;
const STEP_LBF = 2;

/**
 * Whether what is not used is lost faster.
 * @param ageYears the archer's age, where it is known
 * @returns true over 45
 */
export function isOlderArcher(ageYears: number | undefined): boolean {
  return ageYears !== undefined && ageYears > OLDER_FROM_YEARS;
}

/**
 * The share of the time at full draw that is left after days away.
 * @param days since anything was last drawn
 * @param isOlder over 45
 * @returns 1 up to a week, then less with every day, a quarter at the least
 */
export function layoffKeep(days: number, isOlder: boolean): number {
  if (days < LAYOFF_FROM_DAYS) return 1;
  return Math.max(LEAST_KEEP, 2 ** (-(days - LAYOFF_FROM_DAYS + 1) / (isOlder ? OLDER_HALF_DAYS : HALF_DAYS)));
}

/**
 * What a dose becomes after days away: hold, reps and weight fall together, nowhere up. What the file says may only make it less.
 * @param dose before them
 * @param level its place on the ladder
 * @param days since anything was last drawn, in any program
 * @param rules the block's
 * @param isOlder over 45
 * @returns nowhere more than the dose
 */
export function afterLayoff(dose: Dose, level: number, days: number, rules: BlockRules, isOlder: boolean): Dose {
  if (days < LAYOFF_FROM_DAYS) return fileLayoff(dose, level, days, rules);
  const foot = rules.path[0]!;
  const shrunk = shrink(dose, layoffKeep(days, isOlder), leastHold(foot));
  const steps = Math.ceil((days - LAYOFF_FROM_DAYS + 1) / 7);
  const lighter = { ...shrunk, addedWeight: Math.max(0, dose.addedWeight - STEP_LBF * steps) };
  const own = fileLayoff(lighter, level, days, rules);
  return days >= YEAR_AWAY_DAYS ? { ...leastOf(own, foot), addedWeight: 0 } : own;
}

function fileLayoff(dose: Dose, level: number, days: number, { path, layoff }: BlockRules): Dose {
  let stepsDown = 0;
  for (const entry of layoff) if (days >= entry.days) stepsDown = Math.max(stepsDown, entry.stepsDown);
  if (stepsDown === 0) return dose;
  // A ladder that resets has places below that ask for more in one lever: nowhere more than here, nor than on the way down.
  return path.slice(Math.max(0, level - stepsDown), Math.max(1, level)).reduce(leastOf, dose);
}
