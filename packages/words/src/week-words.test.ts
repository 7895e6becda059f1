import { expect, test } from 'vitest';
import { formatDay } from './format-for-people.ts';
import { spanWordsWithYear } from './week-words.ts';

const short = (day: string) => formatDay(day, 'short');
const withYear = (day: string) => formatDay(day, 'shortYear');

test('a week over the turn of the year says both years', () => {
  const inside = spanWordsWithYear(['2026-11-23', '2026-11-29']);
  expect(inside).toBe(`${short('2026-11-23')} to ${withYear('2026-11-29')}`);
  const over = spanWordsWithYear(['2026-12-28', '2027-01-03']);
  expect(over).toBe(`${withYear('2026-12-28')} to ${withYear('2027-01-03')}`);
});
