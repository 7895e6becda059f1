import { prescribe } from '@larkhold/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLifePlan, askedBy, drillOf, inputOf, live } from '../../../../../tests/fixtures/prescription/any-life.ts';
import { builtInPrograms } from '../../program/built-in-programs.ts';
import { dayOfNumber } from '../../units/calendar-day.ts';

// Law: the longer away, the less; over 45 faster; after a year at most the foot, without added weight.

describe('the longer away, the less', { timeout: 300_000 }, () => {
  it('no lever rises with days away, and after a year it is at most the foot without weight', () => {
    fc.assert(
      fc.property(anyLifePlan(), (plan) => {
        const life = live(plan);
        const last = life.days.at(-1)!;
        const records = last.record ? [...last.records, last.record] : last.records;
        // Pain may be over when somebody comes back, and a file's lighter week too: these are other laws.
        if (
          last.program.kind === 'test' ||
          records.length === 0 ||
          [...records, ...last.entries].some(({ pain }) => pain)
        )
          return;
        const asked = (days: number) =>
          askedBy(
            prescribe({ ...inputOf(life, last), readiness: undefined, records, today: dayOfNumber(last.day + days) }),
          );
        let before = asked(8);
        for (const days of [11, 20, 35, 60, 120, 364]) {
          const now = asked(days);
          expect(now.holdMs).toBeLessThanOrEqual(before.holdMs);
          expect(now.weightLbf).toBeLessThanOrEqual(before.weightLbf);
          before = now;
        }
        const year = asked(400);
        expect(year.weightLbf).toBe(0);
        expect(year.holdMs).toBeLessThanOrEqual(Math.max(...last.program.blocks.map(({ hold }) => hold * 1000)));
      }),
      { seed: 401, numRuns: 2000 },
    );
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
