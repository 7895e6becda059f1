import fc from 'fast-check';
import { DateTime } from 'luxon';
import { expect, test } from 'vitest';
import { daysOfWeek, mondayOfWeek, shiftWeek, weekdayOf, weekListing } from './iso-weeks.ts';

const day = fc
  .integer({ min: -20_000, max: 40_000 })
  .map((number) => DateTime.fromMillis(number * 86_400_000, { zone: 'utc' }));
const weekText = (at: DateTime) => at.toFormat("kkkk-'W'WW");

test('weeks begin and follow each other as an independent calendar says (luxon)', () => {
  fc.assert(
    fc.property(day, fc.integer({ min: -60, max: 60 }), (at, count) => {
      const week = weekText(at);
      expect(mondayOfWeek(week)).toBe(at.startOf('week').toISODate());
      expect(shiftWeek(week, count)).toBe(weekText(at.plus({ weeks: count })));
      expect(weekdayOf(at.toISODate()!)).toBe(at.weekday);
    }),
  );
});

test('a day is listed on its own page, whatever day the list begins with', () => {
  fc.assert(
    fc.property(day, fc.constantFrom('monday', 'sunday', 'saturday'), (at, start) => {
      const days = daysOfWeek(weekListing(at.toISODate()!, start), start);
      expect(days).toContain(at.toISODate());
      expect(DateTime.fromISO(days[0]!).setLocale('en').weekdayLong?.toLowerCase()).toBe(start);
    }),
  );
});

// ISO 8601: 2026 has 53 weeks (1 January 2026 is a Thursday), 2025 has 52.
test('a week that a year does not have is refused', () => {
  expect(mondayOfWeek('2026-W53')).toBe('2026-12-28');
  expect(mondayOfWeek('2025-W53')).toBeUndefined();
  expect(mondayOfWeek('2026-W00')).toBeUndefined();
  expect(mondayOfWeek('week')).toBeUndefined();
});
