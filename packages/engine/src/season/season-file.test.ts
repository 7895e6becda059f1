import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anySeason } from '../../../../tests/fixtures/season/any-season.ts';
import { formatSeason } from './format-season.ts';
import { parseSeason } from './parse-season.ts';

const folder = new URL('../../../../tests/fixtures/season/', import.meta.url);
const fixture = readFileSync(new URL('v1-indoor-winter.season.json', folder), 'utf8');
const problemsOf = (text: string) => {
  const parsed = parseSeason(text);
  return parsed.ok ? [] : parsed.problems;
};
/** The fixture with one text in it replaced. */
const withText = (from: string, to: string) => {
  expect(fixture).toContain(from);
  return fixture.replace(from, to);
};

describe('a season file', () => {
  it('of version 1 is read for ever, and written as it was', () => {
    const parsed = parseSeason(fixture);
    expect(parsed.ok ? [] : parsed.problems).toEqual([]);
    expect(parsed.ok && formatSeason(parsed.season)).toBe(fixture);
  });

  it('is read back as it was written, and writes the same text again, whatever season it is', () => {
    fc.assert(
      fc.property(anySeason, (season) => {
        const text = formatSeason(season);
        const parsed = parseSeason(text);
        expect(parsed).toEqual({ ok: true, season });
        expect(parsed.ok && formatSeason(parsed.season)).toBe(text);
      }),
      { numRuns: 200, seed: 20_261_129 },
    );
  });

  it.each([
    [
      'a day that does not exist',
      '"from": "2026-11-02"',
      '"from": "2026-02-30"',
      '/blocks/0/from',
      /a day that exists/,
    ],
    [
      'a stretch that ends before it begins',
      '"to": "2026-12-27"',
      '"to": "2026-12-20"',
      '/restDays/0/to',
      /before it begins/,
    ],
    [
      'a competition that does',
      '"lastDay": "2027-01-17"',
      '"lastDay": "2027-01-15"',
      '/competitions/0/lastDay',
      /2027-01-16 or later/,
    ],
    ['a block of three weeks', '"weeks": 6', '"weeks": 3', '/blocks/0/weeks', /at least 4/],
    ['a lighter week after its last', '        4\n', '        7\n', '/blocks/0/lighterWeeks/0', /at most 6/],
    [
      'a session outside of its answer',
      '"day": "2026-12-30"',
      '"day": "2026-12-28"',
      '/dated/0/sessions/0/day',
      /from 2026-12-29/,
    ],
    ['an answer without an instant', '2026-12-28T18:00:00+01:00', '2026-12-28', '/dated/0/madeAt', /offset/],
    ['an unknown weekday', '"tuesday"', '"someday"', '/blocks/1/days/someday', /not known/],
    ['another importance', '"minor"', '"huge"', '/competitions/1/importance', /"main" \/ "middle" \/ "minor"/],
    ['a newer version', '"version": 1', '"version": 2', '/version', /Update Larkhold/],
    ['another format', 'larkhold/season', 'larkhold/program', '/format', /not a season/],
  ])('with %s is refused, with pointer, line and column', (_, from, to, pointer, message) => {
    const text = withText(from, to);
    const [problem] = problemsOf(text);
    expect(problem).toMatchObject({ pointer, message: expect.stringMatching(message) });
    const changedLine = text.split('\n').findIndex((line, at) => line !== fixture.split('\n')[at]) + 1;
    expect(problem?.line).toBe(changedLine);
    expect(problem?.column).toBeGreaterThan(1);
  });

  it('names a day twice in one answer only to be told so', () => {
    const session = /\{\s*"day": "2026-12-30"[\s\S]*?\]\s*\}/.exec(fixture)![0];
    expect(problemsOf(fixture.replace(session, `${session}, ${session}`))).toMatchObject([
      { pointer: '/dated/0/sessions/1/day', message: expect.stringMatching(/twice/) },
    ]);
  });
});
