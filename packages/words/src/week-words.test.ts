import { createTotals } from '@larkhold/engine';
import { expect, test } from 'vitest';
import { createWords } from './create-words.ts';
import { spanWords, totalsLines } from './week-words.ts';

/** A platform's data may have thin spaces around the dash, or none. */
const plain = (text: string) => text.replace(/[\s\u2009]*–[\s\u2009]*/g, '–');

// Unicode CLDR 48, intervalFormats of en-GB and de for the skeleton yMMMMd, from memory.
test.each([
  ['en-GB', ['2026-11-23', '2026-11-26', '2026-11-29'], '23–29 November 2026'],
  ['en-GB', ['2026-11-30', '2026-12-06'], '30 November–6 December 2026'],
  ['en-GB', ['2026-12-28', '2027-01-03'], '28 December 2026–3 January 2027'],
  ['de-DE', ['2026-11-23', '2026-11-29'], '23.–29. November 2026'],
  ['de-DE', ['2026-12-28', '2027-01-03'], '28. Dezember 2026–3. Januar 2027'],
])('in %s the days of a week say once what both ends have in common', (locale, dates, words) => {
  expect(plain(spanWords(dates, 'year', createWords(locale)))).toBe(words);
});

test('both ends are written in one way, and no days are no words', () => {
  const shape = (text: string) => text.replace(/[A-Za-z]+/g, 'x').replace(/\d+/g, '9');
  for (const style of ['short', 'shortYear', 'year'] as const) {
    const [first, last] = spanWords(['2026-12-28', '2027-01-03'], style)
      .split('–')
      .map((end) => shape(end.trim()));
    expect(first).toBe(last);
  }
  expect(spanWords([])).toBe('');
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
