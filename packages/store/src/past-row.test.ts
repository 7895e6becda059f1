import type { Past } from '@larkhold/engine';
import { expect, it } from 'vitest';
import type { Found } from './adapter.ts';
import { pastRow, readPast } from './past-row.ts';

const before = '2026-10-12';
const past = { version: 6, before, firstDay: 0, drillCount: 3, dayCount: 2, programs: [] } as unknown as Past;
const row = pastRow(past, '2026-11-24T06:00:00Z');

/** What is read on a day beside a past, where these drills are named. */
function readOn(today: string, dates: readonly string[], one: unknown = row) {
  const drills = new Map(dates.map((date, index) => [`d${index}`, { date }]));
  const lately = new Map([...drills.keys()].map((key) => [`drills/${key}`, 'stamp']));
  const found: Found = new Map<'drills' | 'days' | 'lately', Map<string, unknown>>([
    ['drills', drills],
    ['days', new Map()],
    ['lately', lately],
  ]);
  return readPast(
    one,
    found,
    new Map([
      ['drills', 3 + dates.length],
      ['days', 2],
    ]),
    today,
  );
}

// 12 October and 14 days are 26 October.
it('a past is used from its fourteenth day on, with its latest edit', () => {
  expect(readOn('2026-10-26', [])).toEqual({ past, latest: '2026-11-24T06:00:00Z' });
  expect(readOn('2026-10-25', [])).toBeUndefined();
});

it('a drill of its first day beside it is no part of it; one of the day before is', () => {
  expect(readOn('2026-11-25', ['2026-10-12'])).toBeDefined();
  expect(readOn('2026-11-25', ['2026-10-11'])).toBeUndefined();
});

it('1,500 drills beside a past are few, one more is not', () => {
  const days = (count: number) => Array.from({ length: count }, () => '2026-11-01');
  expect(readOn('2026-11-25', days(1500))).toBeDefined();
  expect(readOn('2026-11-25', days(1501))).toBeUndefined();
});

it('a past of other rules, or that has lost a letter, is not used', () => {
  expect(readOn('2026-11-25', [], { ...Object(row), version: 5 })).toBeUndefined();
  expect(readOn('2026-11-25', [], { ...Object(row), text: JSON.stringify(past).replace('12', '13') })).toBeUndefined();
});
