import fc from 'fast-check';
import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import { dayNumber, dayOfNumber, isoWeek } from './calendar-day.ts';

describe('calendar days', () => {
  // ISO 8601 examples: 2005-01-01 is 2004-W53-6; 2024-12-30 is 2025-W01-1; 2027-01-03 is 2026-W53-7.
  it.each([
    ['2005-01-01', '2004-W53'],
    ['2024-12-30', '2025-W01'],
    ['2027-01-03', '2026-W53'],
  ])('%s is in %s', (day, week) => expect(isoWeek(day)).toBe(week));

  it('agree with luxon, in both directions', () => {
    fc.assert(
      fc.property(fc.integer({ min: -200_000, max: 200_000 }), (number) => {
        const day = DateTime.fromMillis(number * 86_400_000, { zone: 'utc' });
        expect(dayOfNumber(number)).toBe(day.toISODate());
        expect(dayNumber(dayOfNumber(number))).toBe(number);
        expect(isoWeek(dayOfNumber(number))).toBe(day.toFormat("kkkk-'W'WW"));
      }),
      { seed: 2026 },
    );
  });

  // 2000-01-01 is day 10,957, 2024-01-01 day 19,723 (365 days a year and 7 or 13 leap days since 1970); 59 more are 29 February.
  it('know leap days', () => expect(['2000-02-29', '2024-02-29'].map(dayNumber)).toEqual([11_016, 19_782]));

  it.each([
    ...['2026-02-30', '2026-13-01', 'today', '', '1900-02-29', '2026-02-29', '2026-04-31', '2026-06-31', '2026-09-31'],
    ...[
      '2026-11-31',
      '2026-12-32',
      '2026-00-10',
      '2026-01-00',
      '2026/01/01',
      '2026-01/01',
      '2026-01-011',
      '2026-0a-01',
    ],
  ])('refuse %s', (day) => expect(() => dayNumber(day)).toThrow(RangeError));
});
