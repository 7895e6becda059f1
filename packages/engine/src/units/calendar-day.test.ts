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

  it.each(['2026-02-30', '2026-13-01', 'today', ''])('refuse %s', (day) =>
    expect(() => dayNumber(day)).toThrow(RangeError),
  );
});
