import { type Prescription, prescribe } from '@larkhold/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLifePlan, askedBy, drillOf, inputOf, live } from '../../../../../tests/fixtures/prescription/any-life.ts';
import { builtInPrograms } from '../../program/built-in-programs.ts';
import { dayNumber, dayOfNumber } from '../../units/calendar-day.ts';
import { trialLadder, trialProgram } from '../trial-history.ts';

// A Monday: 2024-09-30.
const MONDAY = dayNumber('2024-09-30');
/** Days away in order, among them those at which something begins. */
const manyDays = fc
  .uniqueArray(fc.oneof(fc.integer({ min: 1, max: 70 }), fc.integer({ min: 1, max: 4000 })), {
    minLength: 4,
    maxLength: 7,
  })
  .map((days) => [...new Set([...days, 7, 8, 9])].sort((a, b) => a - b));

const datedRules = ['deload', 'arrows', 'weeklyGrowth', 'weightWaits'];
/** Whether something asks for less today that ends by itself within a week. */
function isDated({ rest, reasons }: Prescription): boolean {
  return rest !== undefined || reasons.some(({ rule }) => datedRules.includes(rule));
}

function expectNoMore(now: Prescription, before: Prescription, days: number) {
  expect([days, askedBy(now).totalMs]).toEqual([days, Math.min(askedBy(now).totalMs, askedBy(before).totalMs)]);
  for (const { block, sets, reps, holdMs, addedWeightLbf } of now.blocks) {
    const was = before.blocks.find((one) => one.block === block)!;
    expect(was).toBeDefined();
    expect(sets * reps).toBeLessThanOrEqual(was.sets * was.reps);
    expect(holdMs).toBeLessThanOrEqual(was.holdMs);
    expect(addedWeightLbf).toBeLessThanOrEqual(was.addedWeightLbf);
  }
}

// Law: the longer away, the less; over 45 faster; after a year at most the foot, without added weight.

describe('the longer away, the less', { timeout: 300_000 }, () => {
  it('no lever of any block rises with days away, nor the time at full draw; after a year at most the foot without weight', () => {
    fc.assert(
      fc.property(anyLifePlan(), manyDays, fc.constantFrom(undefined, 'heavy' as const), (plan, away, readiness) => {
        const life = live(plan);
        const last = life.days.at(-1)!;
        const records = last.record ? [...last.records, last.record] : last.records;
        if (last.program.kind === 'test' || records.length === 0) return;
        const drawn = Math.max(...records.map(({ date }) => dayNumber(date)), last.day);
        let before: Prescription | undefined;
        for (const days of away) {
          const today = dayOfNumber(drawn + days);
          const now = prescribe({ ...inputOf(life, last), readiness, records, today });
          // Two weeks without a drill for too many painful ones are over some day; and below eight days a lighter week is, or a rest day.
          if (now.rest?.rule === 'painAgain' || (days < 8 && isDated(now))) continue;
          if (before) expectNoMore(now, before, days);
          before = now;
        }
        const year = prescribe({ ...inputOf(life, last), records, today: dayOfNumber(drawn + 400) });
        expect(askedBy(year).weightLbf).toBe(0);
        expect(askedBy(year).holdMs).toBeLessThanOrEqual(
          Math.max(...last.program.blocks.map(({ hold }) => hold * 1000)),
        );
      }),
      { seed: 401, numRuns: 2000 },
    );
  });

  it('eight days away end a lighter week', () => {
    // Given drills every other day, and a file whose every second training week keeps half,
    const ladder = { ...trialLadder, deload: { everyWeeks: 2, keep: 0.5 } };
    const program = trialProgram({ sets: 1, reps: 10, hold: 10, ladder });
    let records: ReturnType<typeof drillOf>[] = [];
    const on = (day: number) => prescribe({ program, records, today: dayOfNumber(day) });
    const isLighter = (day: number) => on(day).reasons.some(({ rule }) => rule === 'deload');
    for (const day of [0, 2, 4]) {
      records = [...records, drillOf(program, on(MONDAY + day), { manner: 'clean', saysWhy: false }, day)];
    }
    // when the second week has begun, then it is a lighter one, up to seven days away; and from eight on the weeks begin again.
    expect([7, 9, 11].map((day) => isLighter(MONDAY + day))).toEqual([true, true, true]);
    expect([12, 13].map((day) => isLighter(MONDAY + day))).toEqual([false, false]);
  });

  it('four weeks away bring less, faster over 45, and one drill does not bring all back', () => {
    // Given fourteen clean drills of the laddered holding program,
    const program = builtInPrograms.find(({ title }) => title === 'Laddered holding')!;
    let records: ReturnType<typeof drillOf>[] = [];
    const drill = (day: number) => {
      const given = prescribe({ program, records, today: dayOfNumber(20_000 + day) });
      records = [...records, drillOf(program, given, { manner: 'clean', saysWhy: false }, day)];
      return askedBy(given);
    };
    const before = Array.from({ length: 14 }, (_, at) => drill(2 * at)).at(-1)!;
    // when four weeks pass, then at most about half of the time is asked for, and less still of somebody of sixty;
    const on = (archer: object) => askedBy(prescribe({ program, records, archer, today: dayOfNumber(20_054) }));
    expect(on({}).totalMs).toBeLessThan(0.65 * before.totalMs);
    expect(on({ ageYears: 60 }).totalMs).toBeLessThan(on({ ageYears: 30 }).totalMs);
    // and the drill after the first is still less than it was, and two weeks of drills bring it back.
    drill(54);
    expect(drill(56).totalMs).toBeLessThan(before.totalMs);
    expect(Math.max(...[58, 60, 62, 64, 66, 68, 70].map((day) => drill(day).holdMs))).toBeGreaterThanOrEqual(
      before.holdMs,
    );
  });
});

describe('days away, in numbers', () => {
  const after = (program: ReturnType<typeof trialProgram>, days: number) => {
    const full = prescribe({ program, records: [], today: dayOfNumber(20_000) }).blocks;
    const blocks = full.map((block) => ({ ...block, addedWeightLbf: program.blocks[0]!.addedWeight }));
    const records = [0, 2].map((day) =>
      drillOf(program, { blocks, date: dayOfNumber(20_000 + day) }, { manner: 'clean', saysWhy: false }, day),
    );
    const [block] = prescribe({ program, records, today: dayOfNumber(20_002 + days) }).blocks;
    return [block!.reps, block!.holdMs / 1000, block!.addedWeightLbf];
  };

  it('four weeks beyond the first leave half of the time, and no time away leaves less than a quarter', () => {
    const program = trialProgram({ sets: 1, reps: 10, hold: 30, ladder: undefined });
    expect(after(program, 7)).toEqual([10, 30, 0]);
    expect(after(program, 35)).toEqual([7, 21, 0]); // each by the root of a half
    expect(after(program, 300)).toEqual([5, 15, 0]); // each by half
  });

  it('one hold alone is halved too, though there are no reps to take off', () => {
    const program = trialProgram({ sets: 1, reps: 1, hold: 60, ladder: undefined });
    expect(after(program, 7)).toEqual([1, 60, 0]);
    expect(after(program, 35)).toEqual([1, 30, 0]);
    expect(after(program, 300)).toEqual([1, 15, 0]);
  });

  it('every week takes two pounds off, and a year takes all', () => {
    const program = trialProgram(
      { sets: 1, reps: 10, hold: 30, addedWeight: 6, ladder: undefined },
      { author: 'A coach' },
    );
    expect([8, 15, 22].map((days) => after(program, days)[2])).toEqual([4, 2, 0]);
    const heavy = trialProgram(
      { sets: 1, reps: 10, hold: 30, addedWeight: 30, ladder: undefined },
      { author: 'A coach' },
    );
    expect(after(heavy, 364)[2]).toBe(0);
  });

  it('the 365th day is the one after which nothing but the foot is left', () => {
    // Who has come to 10 x 40 s on a ladder that begins with 10 x 5 s: a quarter of it is 5 x 20 s, and after a year 5 x 5 s is the most.
    const program = trialProgram({
      sets: 1,
      reps: 10,
      hold: 5,
      ladder: { rungs: [{ raise: 'hold', by: 5, until: 60 }] },
    });
    const [foot] = prescribe({ program, records: [], today: dayOfNumber(20_000) }).blocks;
    const done = drillOf(
      program,
      { blocks: [{ ...foot!, holdMs: 40_000 }], date: dayOfNumber(20_000) },
      { manner: 'clean', saysWhy: false },
      0,
    );
    const after = (days: number) =>
      prescribe({ program, records: [done], today: dayOfNumber(20_000 + days) }).blocks.map(({ reps, holdMs }) => [
        reps,
        holdMs,
      ]);
    expect(after(364)).toEqual([[5, 20_000]]);
    expect(after(365)).toEqual([[5, 5000]]);
  });

  it('a limit of growth leaves no more after five weeks than after one', () => {
    // Given a file that lets a week grow by a tenth; one drill of ten holds of 30 s, and in the three weeks after it one hold each,
    const program = trialProgram({ sets: 1, reps: 10, hold: 30, ladder: { ...trialLadder, weeklyGrowth: 1.1 } });
    const [block] = prescribe({ program, records: [], today: dayOfNumber(20_000) }).blocks;
    const drill = (day: number, reps: number) =>
      drillOf(
        program,
        { blocks: [{ ...block!, reps }], date: dayOfNumber(day) },
        { manner: 'clean', saysWhy: false },
        day,
      );
    const records = [drill(19_993, 1), drill(20_000, 10), ...[20_007, 20_014, 20_021].map((day) => drill(day, 1))];
    const reps = (days: number) => prescribe({ program, records, today: dayOfNumber(20_021 + days) }).blocks[0]!.reps;
    // then a tenth over their mean, 107 s, is three holds after a week, and no more when the weeks with drills are long ago.
    expect([7, 40].map(reps)).toEqual([3, 3]);
  });

  it("a file's more steps down ask for no more than its fewer steps, though its ladder resets", () => {
    // Given a ladder 10 x 20 s, 10 x 30 s, 11 x 10 s, 11 x 20 s, ... and an archer at 11 x 20 s,
    const rungs = [
      { raise: 'hold', by: 10, until: 30 },
      { raise: 'reps', by: 1, until: 12, resets: { hold: 10 } },
    ];
    const layoff = [
      { days: 3, stepsDown: 1 },
      { days: 5, stepsDown: 2 },
    ];
    const program = trialProgram({ sets: 1, reps: 10, hold: 20, ladder: { rungs, layoff } });
    const [block] = prescribe({ program, records: [], today: dayOfNumber(20_000) }).blocks;
    const date = dayOfNumber(20_000);
    const done = drillOf(program, { blocks: [{ ...block!, reps: 11 }], date }, { manner: 'clean', saysWhy: false }, 0);
    const hold = (days: number) =>
      prescribe({ program, records: [done], today: dayOfNumber(20_000 + days) }).blocks[0]!.holdMs;
    // when it goes one step down after three days, and two after five, then it is 10 s both times.
    expect([2, 4, 6].map(hold)).toEqual([20_000, 10_000, 10_000]);
  });
});
