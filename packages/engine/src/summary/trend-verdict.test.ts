// Expected values by hand; the noise of one person is 28 % (J Exerc Sci Fitness 2012, n = 21: smallest real difference, the wider end).
import { describe, expect, it } from 'vitest';
import type { DrillRecord } from '../journal/drill-record.ts';
import { trendVerdict } from './trend-verdict.ts';

const today = '2026-11-27';
const drill = (date: string, heldMs: number, outcome: 'held' | 'short' = 'held'): DrillRecord => ({
  ...{ id: `${date} ${heldMs}`, program: 'Holds', date, startedAt: `${date}T06:00:00Z`, endedAt: `${date}T06:10:00Z` },
  reps: [{ block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: heldMs, heldMs, outcome }],
});
const days = (month: string, ...held: number[]) => held.map((heldMs, index) => drill(`${month}-1${index}`, heldMs));
const verdictOf = (drills: DrillRecord[]) => trendVerdict({ drills }, [], today);
// 10 to 12 November are within the last 28 days, 10 to 12 October in the 28 before.
const [late, early] = ['2026-11', '2026-10'];

describe('by the longest clean hold of a day', () => {
  it('is better or worse only beyond the noise of one person', () => {
    const before = days(early, 20_000, 20_000, 20_000);
    expect(verdictOf([...before, ...days(late, 20_000, 26_000, 30_000)])).toMatchObject({ verdict: 'better' });
    expect(verdictOf([...before, ...days(late, 25_500, 25_500, 25_500)])).toEqual({
      ...{ verdict: 'level', by: 'holds', nowMs: 25_500, beforeMs: 20_000 },
    });
    expect(verdictOf([...before, ...days(late, 14_000, 14_000, 14_000)])).toMatchObject({ verdict: 'worse' });
  });

  it('has not enough to say with fewer than three days on either side; a short hold says nothing', () => {
    expect(verdictOf([])).toEqual({ verdict: 'unclear' });
    expect(verdictOf([...days(early, 20_000, 20_000), ...days(late, 30_000, 30_000, 30_000)])).toEqual({
      verdict: 'unclear',
    });
    const short = days(late, 30_000, 30_000, 30_000).map(({ date }) => drill(date, 30_000, 'short'));
    expect(verdictOf([...days(early, 20_000, 20_000, 20_000), ...short])).toEqual({ verdict: 'unclear' });
  });
});

describe('by test results where there are some', () => {
  const test = { id: 't', date: '2026-11-20', program: 'Longest hold', measure: 'longest-hold-seconds' } as const;
  const result = (value: number, share: number, isNews: boolean) => ({
    ...{ ...test, value, isAtLeast: false, change: { from: 30, fromDate: '2026-10-20', share, isNews } },
  });

  it('takes the last result before the holds', () => {
    const drills = [...days(early, 20_000, 20_000, 20_000), ...days(late, 40_000, 40_000, 40_000)];
    expect(trendVerdict({ drills }, [result(33, 0.1, false)], today)).toMatchObject({ verdict: 'level', by: 'test' });
    expect(trendVerdict({ drills }, [result(20, -0.33, true)], today)).toMatchObject({ verdict: 'worse', from: 30 });
  });

  it('leaves a result alone that has none before it, or is older than twelve weeks', () => {
    const { change: _, ...first } = result(33, 0, false);
    expect(trendVerdict({ drills: [] }, [first], today)).toEqual({ verdict: 'unclear' });
    expect(trendVerdict({ drills: [] }, [{ ...result(60, 1, true), date: '2026-09-04' }], today)).toEqual({
      verdict: 'unclear',
    });
  });
});
