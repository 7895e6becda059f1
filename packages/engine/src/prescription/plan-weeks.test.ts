import { describe, expect, it } from 'vitest';
import { builtInPrograms } from '../program/built-in-programs.ts';
import { planWeeks } from './plan-weeks.ts';
import { prescribe } from './prescribe.ts';
import { trialLadder, trialProgram, trialRecord } from './trial-history.ts';

// Rows follow the rules of the program file page. 2026-11-23 is a Monday.

const program = trialProgram({ ladder: { ...trialLadder, deload: { everyWeeks: 4, keep: 0.6 } } });
const monday = { program, records: [], today: '2026-11-23', daysPerWeek: 3 };
const brief = (rows: ReturnType<typeof planWeeks>) =>
  rows.map(({ date, kind, drills }) => [date, kind, ...drills.map(brieflySaid)].join(' '));
type Drill = ReturnType<typeof planWeeks>[number]['drills'][number];
const brieflySaid = ({ title, sets, reps, holdMs, addedWeightLbf }: Drill): string =>
  `${title} ${sets} × ${reps}, hold ${holdMs / 1000} s${addedWeightLbf > 0 ? `, ${addedWeightLbf} lb added` : ''}`;

describe('planWeeks', () => {
  it('climbs as clean sessions do, and lightens every fourth week', () => {
    expect(brief(planWeeks({ ...monday, weeks: 4 }))).toEqual([
      '2026-11-23 usual Holds 2 × 5, hold 30 s',
      '2026-11-25 usual Holds 2 × 5, hold 30 s',
      '2026-11-27 usual Holds 2 × 5, hold 35 s',
      '2026-11-30 usual Holds 2 × 5, hold 35 s',
      '2026-12-02 usual Holds 2 × 5, hold 40 s',
      '2026-12-04 usual Holds 2 × 5, hold 40 s',
      '2026-12-07 usual Holds 2 × 5, hold 45 s',
      '2026-12-09 usual Holds 2 × 5, hold 45 s',
      '2026-12-11 usual Holds 2 × 5, hold 30 s, 2 lb added',
      '2026-12-14 deload Holds 2 × 3, hold 30 s, 2 lb added',
      '2026-12-16 deload Holds 2 × 3, hold 30 s, 2 lb added',
      '2026-12-18 deload Holds 2 × 3, hold 30 s, 2 lb added',
    ]);
  });

  it('begins with what today prescribes, from the records', () => {
    const records = [trialRecord('2026-11-16', 30), trialRecord('2026-11-18', 30)];
    const [first] = planWeeks({ ...monday, records, weeks: 1 });
    const { blocks, durationMs } = prescribe({ program, records, today: '2026-11-23' });
    expect(first).toMatchObject({ durationMs, heldMs: 350_000, drills: [{ holdMs: blocks[0]!.holdMs }] });
    expect(first!.reasons[0]!.change).toMatch(/^Holds: hold 30 s to 35 s, after 2 clean days/);
  });

  it('says of every day where its numbers come from', () => {
    const rows = planWeeks({ ...monday, weeks: 6, competitionDay: '2026-12-20' });
    for (const { kind, reasons } of rows) expect(reasons.length > 0).toBe(kind !== 'competition');
    expect(rows[0]!.reasons.map(({ rule }) => rule)).toEqual(['start']);
  });

  it('plans only days to come, and counts what is done this week', () => {
    const records = [trialRecord('2026-11-24', 30), trialRecord('2026-11-25', 30)];
    const rows = planWeeks({ ...monday, records, today: '2026-11-25', weeks: 1 });
    expect(rows.map(({ date }) => date)).toEqual(['2026-11-27']);
    const late = planWeeks({ ...monday, today: '2026-11-28', weeks: 2 });
    expect(late.map(({ date }) => date)).toEqual(['2026-11-30', '2026-12-02', '2026-12-04']);
  });

  it('takes no future-dated record for done', () => {
    const records = [trialRecord('2026-11-24', 30), trialRecord('2026-11-25', 30)];
    const rows = planWeeks({ ...monday, records, weeks: 1 });
    expect(rows.flatMap(({ drills }) => drills.map(brieflySaid))).toEqual([
      'Holds 2 × 5, hold 30 s',
      'Holds 2 × 5, hold 30 s',
      'Holds 2 × 5, hold 35 s',
    ]);
  });

  it('tapers to a competition: fewer reps, the hold kept, no drill on the day nor the day before', () => {
    const rows = planWeeks({ ...monday, weeks: 4, daysPerWeek: 7, competitionDay: '2026-12-12' });
    const before = (date: string) => rows.find((row) => row.date === date);
    expect(before('2026-11-27')!.kind).toBe('usual'); // 15 days before
    expect(before('2026-11-28')).toMatchObject({ kind: 'taper', drills: [{ reps: 3 }] }); // 0.7 of 5, whole reps
    expect(before('2026-12-05')!.kind).toBe('taper');
    expect(before('2026-12-05')!.drills[0]!.reps).toBeLessThanOrEqual(2);
    expect(before('2026-12-05')!.drills[0]!.holdMs).toBe(before('2026-11-28')!.drills[0]!.holdMs);
    expect(before('2026-12-11')).toBeUndefined();
    expect(before('2026-12-12')).toMatchObject({ kind: 'competition', drills: [] });
    expect(before('2026-12-13')!.kind).not.toBe('taper');
  });

  it('is deterministic and changes nothing it is given', () => {
    const records = Object.freeze([Object.freeze(trialRecord('2026-11-18', 30))]);
    const input = { ...monday, records, weeks: 8 };
    expect(planWeeks(input)).toEqual(planWeeks(input));
  });

  it.each(builtInPrograms.map((built) => [built.title, built] as const))(
    'plans a year of %s in plain numbers',
    (_, built) => {
      const rows = planWeeks({ program: built, records: [], today: '2026-11-23', weeks: 52, daysPerWeek: 3 });
      expect(rows).toHaveLength(156);
      expect(JSON.stringify(rows)).not.toMatch(/NaN|Infinity|null|undefined/);
      expect(rows.every(({ durationMs }) => durationMs > 0 && durationMs <= 4 * 3_600_000)).toBe(true);
    },
  );

  it('throws on weeks, days a week or a competition day that cannot be', () => {
    for (const weeks of [0, 1.5, 53, Number.NaN]) expect(() => planWeeks({ ...monday, weeks })).toThrow(RangeError);
    for (const daysPerWeek of [0, 8]) expect(() => planWeeks({ ...monday, weeks: 1, daysPerWeek })).toThrow(RangeError);
    expect(() => planWeeks({ ...monday, weeks: 1, competitionDay: '2026-02-30' })).toThrow(RangeError);
  });
});
