import { expect, it } from 'vitest';
import type { DrillRecord } from '../journal/drill-record.ts';
import { planWeeks } from '../prescription/plan-weeks.ts';
import { builtInPrograms } from '../program/built-in-programs.ts';
import { climbWeeks } from './climb-weeks.ts';

const today = '2026-11-25';
const drill = (date: string, held: readonly number[], more: Partial<DrillRecord> = {}): DrillRecord => ({
  ...{
    id: `${date} ${held.join()}`,
    program: 'Holding',
    date,
    startedAt: `${date}T06:00:00Z`,
    endedAt: `${date}T06:09:00Z`,
  },
  reps: held.map((seconds, rep) => ({
    ...{ block: 0, set: 0, rep, hand: 'usual', prescribedMs: 30_000, heldMs: seconds * 1000 },
    outcome: seconds >= 30 ? 'held' : 'short',
  })),
  ...more,
});

it('sums a week, and takes the longest hold that was held in full', () => {
  const weeks = climbWeeks({ records: [drill('2026-11-16', [30, 40]), drill('2026-11-22', [29])], plan: [], today });
  expect(weeks).toEqual([
    { monday: '2026-11-16', kind: 'past', longestMs: 40_000, heldMs: 99_000, plannedLongestMs: 0, plannedHeldMs: 0 },
    { monday: '2026-11-23', kind: 'now', longestMs: 0, heldMs: 0, plannedLongestMs: 0, plannedHeldMs: 0 },
  ]);
});

it('has no gap, mixes no tools, and leaves out what is removed, later than today, or on no day at all', () => {
  const records = [
    drill('2026-11-04', [30]),
    drill('2026-11-25', [60], { tool: 'band' }),
    drill('2026-11-24', [70], { removed: true }),
    drill('2026-12-24', [80]),
    drill('2026-02-31', [90]),
    drill('2025-02-01', [90]),
  ];
  expect(climbWeeks({ records, plan: [], today }).map(({ monday, longestMs }) => [monday, longestMs])).toEqual([
    ['2026-11-02', 30_000],
    ['2026-11-09', 0],
    ['2026-11-16', 0],
    ['2026-11-23', 0],
  ]);
  expect(climbWeeks({ records, plan: [], today, tool: 'band' })).toMatchObject([{ kind: 'now', longestMs: 60_000 }]);
});

it('goes on with the plan, as if every drill went clean', () => {
  const [program] = builtInPrograms;
  const plan = planWeeks({ program: program!, records: [], today, weeks: 4, daysPerWeek: 2 });
  const weeks = climbWeeks({ records: [], plan, today });
  expect(weeks.map(({ kind }) => kind)).toEqual(['now', 'ahead', 'ahead', 'ahead']);
  expect(weeks.every(({ plannedHeldMs, longestMs }) => plannedHeldMs > 0 && longestMs === 0)).toBe(true);
  const all = weeks.reduce((sum, { plannedHeldMs }) => sum + plannedHeldMs, 0);
  expect(all).toBe(plan.reduce((sum, { heldMs }) => sum + heldMs, 0));
});

// The Monday of today's week is 23 November; 84 days before it is 31 August.
it('looks twelve weeks back, to the day', () => {
  const weeks = climbWeeks({ records: [drill('2026-08-31', [30])], plan: [], today });
  expect([weeks[0]?.monday, weeks.length]).toEqual(['2026-08-31', 13]);
  expect(climbWeeks({ records: [drill('2026-08-30', [30])], plan: [], today })).toEqual([]);
});

it('of the plan counts what is still to come, today included, and the longest hold of all in a week', () => {
  type Row = Parameters<typeof climbWeeks>[0]['plan'][number];
  const row = (date: string, ...holds: number[]) =>
    ({ date, heldMs: 1000, drills: holds.map((holdMs) => ({ holdMs })) }) as unknown as Row;
  const plan = [row('2026-11-24', 90), row('2026-11-25', 50, 20), row('2026-11-29', 40), row('2026-11-30')];
  expect(climbWeeks({ records: [], plan, today })).toEqual([
    { monday: '2026-11-23', kind: 'now', longestMs: 0, heldMs: 0, plannedLongestMs: 50, plannedHeldMs: 2000 },
  ]);
});
