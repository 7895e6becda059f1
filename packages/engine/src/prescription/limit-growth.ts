import type { DayLoad } from '../archer/logged-day.ts';
import { fewerOverall, heldSeconds } from './block-dose.ts';
import { growthLimitsOf } from './block-rules.ts';
import type { KnownToday } from './known-today.ts';
import type { Limited } from './limited.ts';
import type { PrescribedBlock } from './prescription.ts';
import { reasonOf } from './reason-of.ts';

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
 * @param done what the last weeks asked of the body, whatever the program, and the first day on which anything was drawn
 * @param today days from 1970-01-01
 * @param growth these seven days may hold this many times the mean of the last four training weeks
 * @param lighterDays of lighter weeks and rest days, from 1970-01-01: their sevens are left out of the mean, or they would lead down for ever
 * @returns the budget; undefined while there is no whole week before this one
 * @source a habit, not a proven protection: Buist et al. 2008, Am J Sports Med 36:33
 */
export function growthBudget(
  { loads, firstDay }: { loads: readonly DayLoad[]; firstDay?: number },
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
 * Holds today to the weekly growth that the file allows; each block keeps one rep. After a week away it is that of the seventh day: more days away do
 * not give more.
 * @param blocks today's full day
 * @param known everything that is known today
 * @returns nowhere more
 */
export function limitGrowth(blocks: PrescribedBlock[], { program, body, loads, day, state }: KnownToday): Limited {
  const limits = growthLimitsOf(program);
  if (limits.length === 0) return { blocks };
  const growth = Math.min(...limits);
  const done = { loads: loads(), firstDay: body.firstDay };
  const budget = growthBudget(done, Math.min(day, (body.lastDay ?? day) + WEEK), growth, state.lighterDays);
  if (!budget || heldSeconds(blocks) <= budget.leftSeconds + 1e-6) return { blocks };
  return {
    blocks: fewerOverall(blocks, budget.leftSeconds, false),
    reasonsFor: (from, to) =>
      to.map((block) => {
        const before = from.find((one) => one.block === block.block)!;
        const { title, reps, sets } = block;
        const facts = {
          ...{ title, growth, fromReps: before.reps, fromSets: before.sets, reps, sets },
          ...{ meanSeconds: Math.round(budget.meanSeconds), doneSeconds: Math.round(budget.doneSeconds) },
        };
        return reasonOf('weeklyGrowth', facts, { block: block.block, acts: ['sets', 'reps'] });
      }),
  };
}
