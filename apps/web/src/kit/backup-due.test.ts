import { expect, test } from 'vitest';
import { daysSince, isBackupDue } from './backup-due.ts';

const now = '2026-11-25T06:00:00Z';

test('a backup is due once its days are over, and never while it is off', () => {
  const due = (everyDays: number | undefined, lastAt?: string) =>
    isBackupDue({ everyDays, lastAt, toFolder: false }, now);
  expect(due(undefined)).toBe(false);
  expect(due(7)).toBe(true);
  expect(due(7, '2026-11-19T05:00:00Z')).toBe(false);
  expect(due(7, '2026-11-18T23:00:00Z')).toBe(true);
  expect(due(1, '2026-11-25T00:00:00Z')).toBe(false);
  // A clock that was a year ahead must not put off backups for a year.
  expect(due(7, '2027-11-25T06:00:00Z')).toBe(true);
  expect(due(7, 'some day')).toBe(true);
});

test('days are counted over a leap day and a year’s end', () => {
  expect(daysSince('2028-02-28T23:59:00Z', '2028-03-01T00:01:00Z')).toBe(2);
  expect(daysSince('2026-12-31T12:00:00Z', '2027-01-01T01:00:00Z')).toBe(1);
  expect(daysSince(undefined, now)).toBeUndefined();
});
