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

describe('by days', () => {
  const held = (...of: (readonly [string, number])[]) => of.map(([date, ms]) => drill(date, ms));
  // 27 days before 27 November is 31 October, 28 is 30 October, 55 is 3 October.
  const now = held(['2026-10-31', 30_000], ['2026-11-26', 30_000], [today, 30_000]);

  it('sets 28 days beside the 28 before, to the day', () => {
    const before = held(['2026-10-30', 20_000], ['2026-10-10', 20_000]);
    expect(verdictOf([...now, ...before, drill('2026-10-03', 20_000)])).toMatchObject({
      nowMs: 30_000,
      beforeMs: 20_000,
    });
    expect(verdictOf([...now, ...before, drill('2026-10-02', 20_000)])).toEqual({ verdict: 'unclear' });
    const later = [...now.slice(0, 2), drill('2026-11-28', 30_000), ...before, drill('2026-10-03', 20_000)];
    expect(verdictOf(later)).toEqual({ verdict: 'unclear' });
  });

  it('takes the longest hold of a day in whatever order, and the middle of an even count', () => {
    const before = days(early, 40_000, 9_000, 20_000, 22_000);
    const twice = [...days(late, 30_000, 30_000, 30_000), drill('2026-11-10', 5_000), drill('2026-11-11', 5_000)];
    expect(verdictOf([...before, ...twice])).toMatchObject({ nowMs: 30_000, beforeMs: 21_000 });
  });

  it('calls 27.5 % level and 28.5 % better, and as much less level too', () => {
    const verdict = (ms: number) =>
      verdictOf([...days(early, 20_000, 20_000, 20_000), ...days(late, ms, ms, ms)]).verdict;
    expect([14_200, 14_500, 25_500, 25_700].map(verdict)).toEqual(['worse', 'level', 'level', 'better']);
  });

  it('takes a test of the last 84 days, the day itself included, and none that is still to come', () => {
    const change = { from: 30, fromDate: '2026-06-01', share: 0.4, isNews: true };
    const result = {
      id: 't',
      program: 'Longest hold',
      measure: 'longest-hold-seconds',
      value: 42,
      isAtLeast: false,
    } as const;
    const of = (date: string) => trendVerdict({ drills: [] }, [{ ...result, date, change }], today).verdict;
    // 83 days before 27 November is 5 September.
    expect(['2026-09-05', today, '2026-11-28'].map(of)).toEqual(['better', 'better', 'unclear']);
  });
});
