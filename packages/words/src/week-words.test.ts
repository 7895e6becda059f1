import { createTotals } from '@larkhold/engine';
import { expect, test } from 'vitest';
import { formatDay } from './format-for-people.ts';
import { spanWordsWithYear, totalsLines } from './week-words.ts';

const short = (day: string) => formatDay(day, 'short');
const withYear = (day: string) => formatDay(day, 'shortYear');

test('a week over the turn of the year says both years', () => {
  const inside = spanWordsWithYear(['2026-11-23', '2026-11-29']);
  expect(inside).toBe(`${short('2026-11-23')} to ${withYear('2026-11-29')}`);
  const over = spanWordsWithYear(['2026-12-28', '2027-01-03']);
  expect(over).toBe(`${withYear('2026-12-28')} to ${withYear('2027-01-03')}`);
});

test('the totals say what a camera saw of the time at full draw, in a week with a camera only', () => {
  const sums = (holdMs: number, seenMs?: number) => ({ totals: { ...createTotals(), holdMs, seenMs }, workMinutes: 0 });
  const lines = (now: ReturnType<typeof sums>, before: ReturnType<typeof sums>) =>
    totalsLines({ days: [], now, before } as unknown as Parameters<typeof totalsLines>[0]).map(
      ({ name, now: here, before: there }) => [name, here, there],
    );
  const [first, seen] = lines(sums(90_000, 45_000), sums(30_000));
  expect(first?.[0]).toBe('Time at full draw');
  expect(seen).toEqual(['Of that, as the camera saw it', '45\u00a0s', '–']);
  expect(lines(sums(90_000), sums(30_000)).map(([name]) => name)).not.toContain('Of that, as the camera saw it');
});
