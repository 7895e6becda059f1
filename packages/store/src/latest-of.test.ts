import { createJournal } from '@larkhold/engine';
import { expect, it } from 'vitest';
import { latestOf } from './latest-of.ts';

const now = '2026-11-25T06:00:00.000Z';
const day = (editedAt: string) => ({ ...createJournal(), days: [{ date: '2026-11-24', editedAt }] });

it('the latest edit is that of a row, a single value or a removal, without its device', () => {
  expect(latestOf(createJournal(), now)).toBeUndefined();
  const edited = day('2026-11-24T06:00:00.000Z~phone');
  expect(latestOf(edited, now)).toBe('2026-11-24T06:00:00.000Z');
  const majorGoal = { text: 'A minute', editedAt: '2026-11-24T07:00:00.000Z' };
  expect(latestOf({ ...edited, majorGoal }, now)).toBe('2026-11-24T07:00:00.000Z');
  const removed = [{ of: 'drills', key: 'a', at: '2026-11-24T08:00:00.000Z' }];
  expect(latestOf({ ...edited, majorGoal, removed }, now)).toBe('2026-11-24T08:00:00.000Z');
});

// 400 days after 25 November 2026 are 30 December 2027: 365 to 25 November 2027, and 35.
it('a clock is believed up to 400 days ahead', () => {
  expect(latestOf(day('2027-12-30T06:00:00.000Z'), now)).toBe('2027-12-30T06:00:00.000Z');
  expect(latestOf(day('2027-12-30T06:00:00.001Z'), now)).toBeUndefined();
});
