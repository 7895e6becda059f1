// ISO 8601 weeks, with luxon as the independent oracle; NIST SP 811 and AMO/ATA for the units of the bow.
import { drawLengthInches, isoWeek, onFingersWeightLbf, poundsForceToNewtons } from '@larkhold/engine';
import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';

describe('ISO weeks', () => {
  // ISO 8601: 2005-01-01 is 2004-W53-6; 2024-12-30 is 2025-W01-1; 2027-01-03 is 2026-W53-7.
  it.each([
    ['2005-01-01', '2004-W53', 6],
    ['2024-12-30', '2025-W01', 1],
    ['2027-01-03', '2026-W53', 7],
  ])('%s is in %s', (day, week, weekday) => {
    expect(isoWeek(day)).toBe(week);
    expect(DateTime.fromISO(`${week}-${weekday}`).toISODate()).toBe(day);
  });

  it('give 2026 53 weeks, and every year as many as luxon', () => {
    // 28 December is always in the last week of its year.
    expect(isoWeek('2026-12-28')).toBe('2026-W53');
    for (let year = 1970; year <= 2100; year++) {
      const wanted = DateTime.local(year, 12, 28).weeksInWeekYear;
      expect(isoWeek(`${year}-12-28`)).toBe(`${year}-W${wanted}`);
    }
  });

  it('change on Mondays only', () => {
    let day = DateTime.utc(2024, 1, 1);
    for (let index = 0; index < 1500; index++, day = day.plus({ days: 1 })) {
      const isNew = isoWeek(day.toISODate() ?? '') !== isoWeek(day.minus({ days: 1 }).toISODate() ?? '');
      expect(isNew).toBe(day.weekday === 1);
    }
  });
});

describe('the bow in units', () => {
  it('1 lbf is 4.4482216152605 N (NIST SP 811)', () => expect(poundsForceToNewtons(1)).toBe(4.448_221_615_260_5));

  // AMO/ATA: to the pivot, plus 1 3/4 in.
  it('26 1/4 in to the pivot are a 28 in draw; 74.5 cm are 31.08 in', () => {
    expect(drawLengthInches(26.25)).toBe(28);
    expect(drawLengthInches(74.5 / 2.54)).toBeCloseTo(31.08, 2);
  });

  // Common practice, no source: about 2 lb an inch up to 40 lb, 3 above.
  it.each([
    [30, 28, 30],
    [30, 30, 34],
    [40, 27, 38],
    [44, 29, 47],
    [44, 26, 38],
    [10, 20, 0],
  ])('%d lb marked, drawn %d in, are about %d lb on the fingers', (marked, draw, onFingers) => {
    expect(onFingersWeightLbf(marked, draw)).toBe(onFingers);
  });

  it('no other numbers are accepted', () => {
    for (const wrong of [-1, 101, Number.NaN]) expect(() => onFingersWeightLbf(wrong, 28)).toThrow(/markedLbf/);
    for (const wrong of [14, 41, Number.NaN]) expect(() => onFingersWeightLbf(30, wrong)).toThrow(/drawInches/);
    expect(() => drawLengthInches(-1)).toThrow(RangeError);
  });
});
