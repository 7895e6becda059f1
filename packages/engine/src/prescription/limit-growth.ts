import type { Ladder } from '../program/program.ts';
import { mondayNumber } from '../units/calendar-day.ts';
import type { PrescribedBlock, Reason } from './prescription.ts';
import type { PastSession } from './program-sessions.ts';

/** What a block may still hold this week, milliseconds at full draw. */
export interface GrowthBudget {
  leftMs: number;
  meanMs: number;
  doneMs: number;
}

/**
 * The hold time a weekly growth limit leaves for today.
 * @param sessions the program's sessions in order of time
 * @param block the block's index
 * @param today days from 1970-01-01
 * @param growth this week may hold so many times the mean of the last four training weeks
 * @returns the budget; undefined while there is no earlier training week
 * @source a habit, not a proven protection: Buist et al. 2008, Am J Sports Med 36:33
 */
export function growthBudget(
  sessions: readonly PastSession[],
  block: number,
  today: number,
  growth: number,
): GrowthBudget | undefined {
  const thisMonday = mondayNumber(today);
  const weeks: { monday: number; heldMs: number }[] = [];
  let doneMs = 0;
  for (let at = sessions.length - 1; at >= 0; at--) {
    const { record, monday } = sessions[at]!;
    const heldMs = record.reps.reduce((sum, rep) => sum + (rep.block === block ? rep.heldMs : 0), 0);
    if (heldMs === 0) continue;
    const week = weeks.at(-1);
    if (monday === thisMonday) doneMs += heldMs;
    else if (week?.monday === monday) week.heldMs += heldMs;
    else if (weeks.length === 4) break;
    else weeks.push({ monday, heldMs });
  }
  if (weeks.length === 0) return undefined;
  const meanMs = weeks.reduce((sum, { heldMs }) => sum + heldMs, 0) / weeks.length;
  return { leftMs: Math.max(0, growth * meanMs - doneMs), meanMs, doneMs };
}

/**
 * The most reps, then sets, of a block whose hold time keeps within a budget; at least one rep.
 * @param block today's block
 * @param leftMs milliseconds at full draw
 * @returns sets and reps, never more than the block's
 */
export function withinBudget(block: PrescribedBlock, leftMs: number): { sets: number; reps: number } {
  for (let sets = block.sets; sets >= 1; sets--) {
    const reps = Math.min(block.reps, Math.floor(leftMs / (sets * block.holdMs)));
    if (reps >= 1) return { sets, reps };
  }
  return { sets: 1, reps: 1 };
}

/**
 * Holds a block to its ladder's weekly growth.
 * @param ladder the block's ladder, if it has one
 * @param today today's block
 * @param sessions the program's sessions in order of time
 * @param day days from 1970-01-01
 * @returns today's block, and the reason if the limit acted
 */
export function limitBlock(
  ladder: Ladder | undefined,
  today: PrescribedBlock,
  sessions: readonly PastSession[],
  day: number,
): { block: PrescribedBlock; reason?: Reason } {
  if (ladder?.weeklyGrowth === undefined) return { block: today };
  const budget = growthBudget(sessions, today.block, day, ladder.weeklyGrowth);
  if (!budget || today.sets * today.reps * today.holdMs <= budget.leftMs) return { block: today };
  const { sets, reps } = withinBudget(today, budget.leftMs);
  const seconds = (ms: number) => Math.round(ms / 1000);
  const facts = {
    growth: ladder.weeklyGrowth,
    meanSeconds: seconds(budget.meanMs),
    doneSeconds: seconds(budget.doneMs),
    sets,
    reps,
  };
  const cut =
    sets === today.sets && reps === today.reps
      ? `${sets} × ${reps}, the least there is`
      : `${sets} × ${reps} instead of ${today.sets} × ${today.reps}`;
  const change = `${today.title}: ${cut}, so that this week holds at most ${ladder.weeklyGrowth} times the ${facts.meanSeconds} s of the last training weeks; ${facts.doneSeconds} s are done. This is a habit, not a proven protection: Buist and others found no fewer injuries with such a limit in 2008.`;
  return {
    block: { ...today, sets, reps },
    reason: { rule: 'weeklyGrowth', block: today.block, facts, change, acts: ['sets', 'reps'] },
  };
}
