// Training load: Foster 1998 and 2001, Williams et al. 2017; the SD by simple-statistics, an independent library.
import {
  type DrillRecord,
  dailyLoads,
  drawImpulse,
  holdTime,
  sessionLoad,
  WORKLOAD_RATIO_CAUTION,
  weekLoad,
  workloadRatio,
} from '@larkhold/engine';
import fc from 'fast-check';
import { mean, sampleStandardDeviation, standardDeviation } from 'simple-statistics';
import { describe, expect, it } from 'vitest';

const load = fc.double({ min: 0, max: 1e6, noNaN: true });

function drill(heldSeconds: readonly number[], change: Partial<DrillRecord> = {}): DrillRecord {
  return {
    id: 'd',
    program: 'Slow mornings',
    date: '2026-11-25',
    startedAt: '2026-11-25T06:30:00Z',
    endedAt: '2026-11-25T07:00:00Z',
    reps: heldSeconds.map((seconds, rep) => ({
      ...{ block: 0, set: 0, rep, hand: 'usual', prescribedMs: 30_000, outcome: 'held' },
      heldMs: seconds * 1000,
    })),
    ...change,
  };
}

describe('session load', () => {
  // Foster et al. 2001, J Strength Cond Res 15:109: effort (0-10) times minutes.
  it('is effort times minutes', () => {
    expect(sessionLoad(7, 60)).toBe(420);
    expect(sessionLoad(0, 60)).toBe(0);
  });

  it.each([
    [-1, 30],
    [11, 30],
    [Number.NaN, 30],
    [5, -1],
    [5, 1441],
    [5, Number.POSITIVE_INFINITY],
  ])('refuses effort %d, %d minutes', (effort, minutes) => {
    expect(() => sessionLoad(effort, minutes)).toThrow(RangeError);
  });
});

describe('week load', () => {
  // Worked from Foster 1998, Med Sci Sports Exerc 30:1164, with the sample SD.
  it('gives a worked week', () => {
    const week = weekLoad([300, 0, 420, 0, 360, 240, 0]);
    expect(week.total).toBe(1320);
    expect(week.mean).toBeCloseTo(188.571, 3);
    expect(week.monotony).toBeCloseTo(1.021, 4);
    expect(week.strain).toBeCloseTo(1347.7, 1);
  });

  it('gives a week of one day', () => {
    const week = weekLoad([0, 0, 0, 0, 0, 0, 500]);
    expect(week.monotony).toBeCloseTo(0.378, 4);
    expect(week.strain).toBeCloseTo(189.0, 1);
  });

  it('uses the sample SD: the population SD would give 1.0801 times as much', () => {
    const days = [300, 0, 420, 0, 360, 240, 0];
    expect(mean(days) / standardDeviation(days) / (weekLoad(days).monotony ?? 0)).toBeCloseTo(1.0801, 4);
  });

  it('agrees with simple-statistics on any week', () => {
    fc.assert(
      fc.property(fc.array(load, { minLength: 7, maxLength: 7 }), (days) => {
        const { total, mean: ours, monotony, strain } = weekLoad(days);
        expect(ours).toBeCloseTo(mean(days), 6);
        if (monotony === undefined || strain === undefined) return;
        const wanted = mean(days) / sampleStandardDeviation(days);
        if (Number.isFinite(wanted)) expect(monotony / wanted).toBeCloseTo(1, 6);
        expect(strain).toBeCloseTo(total * monotony, 6);
      }),
      { seed: 4 },
    );
  });

  it('leaves monotony and strain out when all days are equal, for then they are not defined', () => {
    for (const one of [0, 300, 0.1 + 0.2]) {
      expect(weekLoad(new Array(7).fill(one))).toStrictEqual({
        total: expect.closeTo(7 * one, 9),
        mean: expect.closeTo(one, 9),
      });
    }
    expect(weekLoad([0.3, 0.3, 0.3, 0.1 + 0.2, 0.3, 0.3, 0.3]).monotony).toBeUndefined();
  });

  it('is finite for the smallest and the largest loads', () => {
    for (const one of [5e-324, 1e-200, 1e9]) {
      const { monotony = 0, strain = 0 } = weekLoad([one, 0, 0, 0, 0, 0, 0]);
      expect(Number.isFinite(monotony) && Number.isFinite(strain)).toBe(true);
    }
  });

  it('refuses what is no week', () => {
    for (const wrong of [[], [1, 2, 3], [1, 2, 3, 4, 5, 6, -7], [1, 2, 3, 4, 5, 6, Number.NaN]])
      expect(() => weekLoad(wrong)).toThrow(RangeError);
  });
});

describe('acute:chronic workload ratio', () => {
  const series = [...new Array<number>(21).fill(30), ...new Array<number>(7).fill(50)];

  // Williams et al. 2017, Br J Sports Med 51:209, published as 1.25 and 1.43.
  it('gives the published series', () => {
    expect(workloadRatio(series, { method: 'ewma' })).toBeCloseTo(1.2497, 4);
    expect(workloadRatio(series, { method: 'rolling' })).toBeCloseTo(1.4286, 4);
    expect(workloadRatio(series)).toBe(50 / 35);
  });

  // Williams et al. 2017: EWMA today = load x lambda + (1 - lambda) x EWMA yesterday, lambda = 2 / (N + 1), seeded with the first day. Written out,
  // it is a sum of powers: another way to the same number.
  it('weighs days by powers of 1 - 2 / (N + 1), the first day with what is left', () => {
    const average = (days: readonly number[], spanDays: number) => {
      const kept = 1 - 2 / (spanDays + 1);
      const [first = 0, ...later] = [...days].map((one, at) => one * kept ** (days.length - 1 - at));
      return first + (1 - kept) * later.reduce((sum, one) => sum + one, 0);
    };
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 900 }), { minLength: 28, maxLength: 120 }), (days) => {
        const chronic = average(days, 28);
        fc.pre(chronic > 0);
        expect(workloadRatio(days, { method: 'ewma' })).toBeCloseTo(average(days, 7) / chronic, 9);
      }),
      { seed: 6 },
    );
  });

  it('is 1 when every day is the same, whatever the method', () => {
    for (const method of ['rolling', 'ewma'] as const)
      expect(workloadRatio(new Array(60).fill(120), { method })).toBeCloseTo(1, 12);
  });

  it('counts days of rest: a week off takes the rolling ratio to 0', () => {
    expect(workloadRatio([...new Array<number>(21).fill(30), ...new Array<number>(7).fill(0)])).toBe(0);
  });

  it('has no answer for too few days or no load', () => {
    expect(workloadRatio([])).toBeUndefined();
    expect(workloadRatio(series.slice(1))).toBeUndefined();
    for (const method of ['rolling', 'ewma'] as const)
      expect(workloadRatio(new Array(28).fill(0), { method })).toBeUndefined();
  });

  it('is never NaN, infinite or negative', () => {
    const options = fc.record({
      method: fc.constantFrom('rolling' as const, 'ewma' as const),
      acuteDays: fc.integer({ min: 1, max: 10 }),
      chronicDays: fc.integer({ min: 11, max: 40 }),
    });
    fc.assert(
      fc.property(fc.array(load, { maxLength: 80 }), options, (days, how) => {
        const ratio = workloadRatio(days, how);
        if (ratio !== undefined) expect(Number.isFinite(ratio) && ratio >= 0).toBe(true);
      }),
      { seed: 5 },
    );
  });

  it('refuses spans that make no sense', () => {
    for (const wrong of [{ acuteDays: 0 }, { acuteDays: 28 }, { acuteDays: 2.5 }, { chronicDays: Number.NaN }])
      expect(() => workloadRatio(series, wrong)).toThrow(RangeError);
    expect(() => workloadRatio([1, -1])).toThrow(RangeError);
  });

  it('comes with the sentence that it does not predict', () => {
    expect(WORKLOAD_RATIO_CAUTION).toMatch(/does not predict/);
  });
});

describe('time and impulse at full draw', () => {
  it('adds up the seconds that were held', () => {
    expect(holdTime([drill([30, 30, 21.4]), drill([15])])).toBeCloseTo(96.4, 9);
    expect(holdTime([])).toBe(0);
    expect(holdTime([drill([30], { removed: true })])).toBe(0);
  });

  // NIST SP 811: 1 lbf = 4.4482216152605 N. 40 lbf for 60 s.
  it('is force times time', () => {
    expect(drawImpulse(drill([30, 30]), 40)).toBeCloseTo(10_675.731_876_625_2, 6);
    expect(drawImpulse(drill([]), 40)).toBe(0);
    for (const wrong of [-1, 201, Number.NaN]) expect(() => drawImpulse(drill([30]), wrong)).toThrow(RangeError);
  });
});

describe('daily loads', () => {
  it('adds up a day and leaves days of rest at 0', () => {
    const journal = {
      drills: [
        drill([30], { effort: 5, durationMs: 1_800_000 }),
        drill([30], { effort: 4, durationMs: 600_000 }),
        drill([30], { effort: 9, durationMs: 600_000, removed: true as const }),
        drill([30], { date: '2026-11-23' }),
        drill([30], { date: '2026-11-01', effort: 5, durationMs: 600_000 }),
      ],
      days: [
        {
          date: '2026-11-24',
          shootingEffort: 3,
          shootingMinutes: 60,
          work: [{ kind: 'fitness' as const, minutes: 20 }],
        },
        { date: '2026-11-22', arrows: [{ kind: 'practice' as const, count: 60 }] },
        { date: '2026-11-21', feel: 3 },
      ],
      weeks: [],
    };
    expect(dailyLoads(journal, '2026-11-25', 7)).toEqual({ loads: [0, 0, 0, 0, 0, 180, 190], unratedCount: 3 });
  });
});
