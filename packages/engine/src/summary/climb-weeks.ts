import type { DrillRecord } from '../journal/drill-record.ts';
import { heldOf } from '../journal/held-of.ts';
import type { PlanRow } from '../prescription/plan-row.ts';
import type { Program } from '../program/program.ts';
import { dayNumberOf, dayOfNumber, mondayNumber } from '../units/calendar-day.ts';

/** One week of a climb. Times are milliseconds; 0 where there was nothing. */
export interface ClimbWeek {
  /** ISO 8601 day. */
  monday: string;
  kind: 'past' | 'now' | 'ahead';
  /** The longest hold that lasted as long as it was asked to. */
  longestMs: number;
  /** At full draw, every hold added up. */
  heldMs: number;
  /** What is still to come in it, if every drill goes clean. */
  plannedLongestMs: number;
  plannedHeldMs: number;
}

/** Weeks behind that are shown. */
const MOST_BEHIND = 12;

/**
 * Where an archer was, is and goes, week by week: from the first drill on, twelve weeks back at most, up to the last planned week.
 * @param input drill records in any order; the plan of the coming weeks as `planWeeks` gives it; the day; which tool, the bow where left out
 * @returns weeks without a gap, the oldest first; empty where nothing was held and nothing is planned
 * @throws RangeError when there is no such day
 * @example climbWeeks({ records: [], plan: [], today: '2026-11-25' }) // []
 */
export function climbWeeks(input: {
  records: readonly DrillRecord[];
  plan: readonly PlanRow[];
  today: string;
  tool?: Program['tool'];
}): ClimbWeek[] {
  const now = dayNumberOf(input.today);
  if (now === undefined) throw new RangeError(`today is '${input.today}'; expected a day, ISO 8601`);
  const thisMonday = mondayNumber(now);
  const weeks = new Map<number, ClimbWeek>();
  const at = (monday: number): ClimbWeek => {
    const kind = monday === thisMonday ? 'now' : monday < thisMonday ? 'past' : 'ahead';
    const nothing = { longestMs: 0, heldMs: 0, plannedLongestMs: 0, plannedHeldMs: 0 };
    const week = weeks.get(monday) ?? { monday: dayOfNumber(monday), kind, ...nothing };
    weeks.set(monday, week);
    return week;
  };
  for (const { date, reps, tool, removed } of input.records) {
    const day = dayNumberOf(date);
    if (day === undefined || removed || day > now || (tool ?? 'bow') !== (input.tool ?? 'bow')) continue;
    if (mondayNumber(day) < thisMonday - 7 * MOST_BEHIND) continue;
    const week = at(mondayNumber(day));
    const { heldMs, longestMs } = heldOf(reps);
    week.heldMs += heldMs;
    week.longestMs = Math.max(week.longestMs, longestMs);
  }
  for (const { date, drills, heldMs } of input.plan) {
    const day = dayNumberOf(date);
    if (day === undefined || day < now || drills.length === 0) continue;
    const week = at(mondayNumber(day));
    week.plannedHeldMs += heldMs;
    week.plannedLongestMs = Math.max(week.plannedLongestMs, ...drills.map(({ holdMs }) => holdMs));
  }
  const mondays = [...weeks.keys()];
  if (mondays.length === 0) return [];
  const [first, last] = [Math.min(thisMonday, ...mondays), Math.max(thisMonday, ...mondays)];
  return Array.from({ length: (last - first) / 7 + 1 }, (_, index) => at(first + 7 * index));
}
