import { expect, test } from 'vitest';
import { formatDay } from './format-for-people.ts';
import { spanWordsWithYear } from './week-words.ts';

const short = (day: string) => formatDay(day, 'short');

test('a week over the turn of the year says both years', () => {
  const inside = spanWordsWithYear(['2026-11-23', '2026-11-29']);
  expect(inside).toBe(`${short('2026-11-23')} to ${short('2026-11-29')} 2026`);
  const over = spanWordsWithYear(['2026-12-28', '2027-01-03']);
  expect(over).toBe(`${short('2026-12-28')} 2026 to ${short('2027-01-03')} 2027`);
});
