import type { BodyState } from '../archer/body-state.ts';
import { doseOf, fewerOverall, heldSeconds } from './block-dose.ts';
import type { KnownToday } from './known-today.ts';
import type { PrescribedBlock } from './prescription.ts';
import type { Reason } from './reason.ts';
import { reasonOf } from './reason-words.ts';

const WEEK = 7;
const WEEKS = 4;

/** What these seven days may still hold, seconds at full draw over all programs. */
export interface GrowthBudget {
  leftSeconds: number;
  meanSeconds: number;
  doneSeconds: number;
}

/**
 * The hold time that a weekly growth limit leaves for today. Weeks are the seven days up to today and the sevens before them, so that it does
 * not matter on which weekday somebody begins; a seven that began before the first draw does not count, nor does one without a draw.
 * @param body everything that was drawn, whatever the program
 * @param today days from 1970-01-01
 * @param growth these seven days may hold so many times the mean of the last four training weeks
 * @param lighterDays of lighter weeks and rest days, from 1970-01-01: their sevens are left out of the mean, or they would lead down for ever
 * @returns the budget; undefined while there is no whole week before this one
 * @source a habit, not a proven protection: Buist et al. 2008, Am J Sports Med 36:33
 */
export function growthBudget(
  { loads, firstDay }: BodyState,
  today: number,
  growth: number,
  lighterDays: readonly number[] = [],
): GrowthBudget | undefined {
  if (firstDay === undefined) return undefined;
  const sums = new Array<number>(WEEKS + 1).fill(0);
  for (const { day, heldMs } of loads) {
    const week = Math.floor((today - day) / WEEK);
    if (week >= 0 && week <= WEEKS) sums[week] = (sums[week] ?? 0) + heldMs / 1000;
  }
  const [doneSeconds = 0, ...before] = sums;
  const drawn = before.flatMap((seconds, at) => (seconds > 0 && today - (at + 2) * WEEK + 1 >= firstDay ? [at] : []));
  const usual = drawn.filter((at) => !lighterDays.some((day) => Math.floor((today - day) / WEEK) === at + 1));
  const whole = (usual.length > 0 ? usual : drawn).map((at) => before[at]!);
  if (whole.length === 0) return undefined;
  const meanSeconds = whole.reduce((sum, seconds) => sum + seconds, 0) / whole.length;
  return { leftSeconds: Math.max(0, growth * meanSeconds - doneSeconds), meanSeconds, doneSeconds };
}

/**
 * Holds today to the weekly growth that the file allows; each block keeps one rep.
 * @param blocks today's
 * @param known everything that is known today
 * @param mostSeconds what the limit left of the day before anything eased: an eased day is no more
 * @returns the blocks, and the reasons where the limit acted
 */
export function limitGrowth(
  blocks: PrescribedBlock[],
  { program, body, day, state }: KnownToday,
  mostSeconds = Number.POSITIVE_INFINITY,
): { blocks: PrescribedBlock[]; reasons: Reason[] } {
  const limits = program.blocks.flatMap(({ ladder }) => ladder?.weeklyGrowth ?? []);
  if (limits.length === 0) return { blocks, reasons: [] };
  const growth = Math.min(...limits);
  const budget = growthBudget(body, day, growth, state.lighterDays);
  if (!budget) return { blocks, reasons: [] };
  const limitSeconds = Math.min(budget.leftSeconds, mostSeconds);
  if (heldSeconds(blocks) <= limitSeconds + 1e-6) return { blocks, reasons: [] };
  const less = fewerOverall(blocks, limitSeconds, limitSeconds === mostSeconds);
  const reasons = less.map((block) => {
    const from = doseOf(blocks.find((one) => one.block === block.block)!);
    const facts = {
      ...{ title: block.title, growth, fromReps: from.reps, fromSets: from.sets, reps: block.reps, sets: block.sets },
      ...{ meanSeconds: Math.round(budget.meanSeconds), doneSeconds: Math.round(budget.doneSeconds) },
    };
    return reasonOf('weeklyGrowth', facts, { block: block.block, acts: ['sets', 'reps'] });
  });
  return { blocks: less, reasons };
}
