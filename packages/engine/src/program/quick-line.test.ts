import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatQuickLine, parseQuickLine, type QuickBlock } from './quick-line.ts';

const usual = { drill: 'holding', draw: 3, letDown: 3, letDownTo: 'rest', hand: 'usual', addedWeight: 0 };
const problemsOf = (text: string) => {
  const parsed = parseQuickLine(text);
  return parsed.ok ? [] : parsed.problems.map(({ start, end, message }) => [text.slice(start, end), message]);
};

describe('parseQuickLine', () => {
  it('reads sets, reps, hold and rests', () => {
    const block = { ...usual, sets: 3, reps: 10, hold: 30, rest: { timesHold: 2 }, setRest: 120 };
    expect(parseQuickLine('3x10 hold 30 rest 2x, set rest 2m')).toEqual({ ok: true, block });
    expect(parseQuickLine(' set rest 2:00,  REST 2 X Hold 30s 3 × 10 ')).toEqual({ ok: true, block });
  });

  it('reads everything a line can say', () => {
    const text = '3x5 power hold 3 rest 0, set rest 1.5m, draw 1.5, let down 2, to set-up, add 2.5 lb, both hands';
    expect(parseQuickLine(text)).toEqual({
      ok: true,
      block: {
        ...{ sets: 3, reps: 5, drill: 'power', hold: 3, rest: { seconds: 0 }, setRest: 90, draw: 1.5, letDown: 2 },
        ...{ letDownTo: 'set-up', addedWeight: 2.5, hand: 'both' },
      },
    });
    expect(problemsOf(text)).toEqual([]);
  });

  it.each([
    ['1x5 hold 5 rest 20 sparkle', 'sparkle', /not understood/],
    ['1x5 hold 5 hold 6 rest 20', 'hold 6', /repeats/],
    ['1x5 hold abc rest 20', 'hold', /not understood/],
    ['1x5 rest 20', '1x5 rest 20', /hold 30/],
    ['', '', /3x10/],
    ['1x5 hold 500 rest 20', 'hold 500', /at most 180\. Found 500/],
    ['1x99 hold 5 rest 20', '1x99', /60/],
    ['1x5 hold 5.25 rest 20', 'hold 5.25', /tenth/],
    ['2x5 hold 5 rest 20', '2x5 hold 5 rest 20', /set rest 2m/],
    ['1x5 hold 5 rest 20x9', 'rest 20x9', /not understood/],
  ])('marks what is wrong in %j', (text, stretch, message) => {
    const problems = problemsOf(text);
    expect(problems[0]?.[0]).toBe(stretch);
    expect(problems[0]?.[1]).toMatch(message);
  });

  it('answers any text, without a throw', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string({ unit: 'binary' }), fc.stringMatching(/^[0-9x.:, holdrestm]{0,400}$/)),
        (text) => {
          const parsed = parseQuickLine(text);
          for (const { start, end } of parsed.ok ? [] : parsed.problems) {
            expect(start).toBeGreaterThanOrEqual(0);
            expect(end).toBeGreaterThanOrEqual(start);
            expect(end).toBeLessThanOrEqual(text.length);
          }
        },
      ),
      { numRuns: 300, seed: 7 },
    );
  });
});

describe('formatQuickLine', () => {
  const tenths = (min: number, max: number) => fc.integer({ min, max }).map((value) => value / 10);
  const anyBlock = fc.record({
    ...{ sets: fc.integer({ min: 1, max: 20 }), reps: fc.integer({ min: 1, max: 60 }), draw: tenths(5, 300) },
    ...{ hold: tenths(5, 1800), letDown: tenths(5, 300), setRest: tenths(0, 18_000) },
    drill: fc.constantFrom('holding', 'power', 'flexibility', 'structure', 'free'),
    rest: fc.oneof(
      fc.record({ seconds: tenths(0, 18_000) }),
      fc.record({
        timesHold: fc.double({ min: 0, max: 20, noNaN: true }).filter((value) => value === 0 || value > 1e-4),
      }),
    ),
    letDownTo: fc.constantFrom('rest', 'set-up'),
    hand: fc.constantFrom('usual', 'opposite', 'both'),
    addedWeight: tenths(0, 300),
  }) as fc.Arbitrary<QuickBlock>;

  it('says that a hold counts from the anchor', () => {
    const read = parseQuickLine('1x5 hold 5 rest 20, from anchor');
    expect(read).toMatchObject({ ok: true, block: { countFrom: 'anchor' } });
    expect(read.ok && formatQuickLine(read.block)).toBe('1x5 hold 5 rest 20, from anchor');
  });

  it('is read back as the block it was written from', () => {
    fc.assert(
      fc.property(anyBlock, (block) => {
        expect(parseQuickLine(formatQuickLine(block))).toEqual({ ok: true, block });
      }),
      { numRuns: 300, seed: 20_261_125 },
    );
  });

  it.each([
    '3x10 hold 30 rest 2x, set rest 2m',
    '1x5 hold 5 rest 20',
    '3x5 power hold 3 rest 0, set rest 3m, to set-up',
  ])('writes %s as it was read', (text) => {
    const parsed = parseQuickLine(text);
    expect(parsed.ok && formatQuickLine(parsed.block)).toBe(text);
  });
});

it('reads every line of its page', () => {
  const page = readFileSync(new URL('../../../../docs/quick-line.md', import.meta.url), 'utf8');
  const lines = [...page.matchAll(/^```text\n(.*?)^```$/gms)].flatMap((match) => (match[1] ?? '').trim().split('\n'));
  expect(lines.length).toBeGreaterThan(3);
  for (const line of lines) expect(problemsOf(line)).toEqual([]);
});
