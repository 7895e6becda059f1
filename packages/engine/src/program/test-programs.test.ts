import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { builtInPrograms } from './built-in-programs.ts';
import { parseProgram } from './parse-program.ts';
import { isTestProgram } from './program.ts';

const folder = new URL('../../../../tests/fixtures/program/', import.meta.url);
const fileOf = (name: string) => JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as Record<string, unknown>;
const longest = fileOf('v2-longest-hold.drill.json');
const failing = fileOf('v2-failing-rep.drill.json');
const [block] = failing.blocks as Record<string, unknown>[];

const pointersOf = (file: unknown) => {
  const parsed = parseProgram(JSON.stringify(file));
  return parsed.ok ? [] : parsed.problems.map(({ pointer, message }) => [pointer, message]);
};

describe('a test', () => {
  it('says what it counts', () => {
    const parsed = parseProgram(JSON.stringify(longest));
    expect(parsed.ok && isTestProgram(parsed.program) && parsed.program.measure).toBe('longest-hold-seconds');
    expect(builtInPrograms.filter(isTestProgram).every(({ measure }) => measure !== undefined)).toBe(true);
    expect(builtInPrograms.some((program) => program.kind !== 'test' && isTestProgram(program))).toBe(false);
  });

  it.each([
    ['no measure', { ...failing, measure: undefined }, '', /"measure" is missing/],
    ['a measure that nobody knows', { ...failing, measure: 'arrows' }, '/measure', /rep-where-form-fails/],
    ['a measure without being a test', { ...failing, kind: undefined }, '/measure', /Only a test/],
    ['another kind', { ...failing, kind: 'drill' }, '/kind', /"test"/],
    [
      'a ladder',
      withBlock({ ladder: { rungs: [{ raise: 'reps', by: 1, until: 30 }] } }),
      '/blocks/0/ladder',
      /no ladder/,
    ],
    ['two sets', withBlock({ sets: 2, setRest: 60 }), '/blocks/0/sets', /one set/],
    ['both hands', withBlock({ hand: 'both' }), '/blocks/0/hand', /one hand/],
    ['two blocks', { ...failing, blocks: [{ ...block, setRest: 60 }, block] }, '/blocks/1', /one block/],
    ['ten longest holds', { ...failing, measure: 'longest-hold-seconds' }, '/blocks/0/reps', /one rep/],
  ])('with %s is refused, with its place', (_, file, pointer, message) => {
    expect(pointersOf(file)).toContainEqual([pointer, expect.stringMatching(message)]);
  });
});

function withBlock(change: object): unknown {
  return { ...failing, blocks: [{ ...block, ...change }] };
}

describe('$schema', () => {
  const named = { tool: 'bow', title: 'x', version: 2, format: 'larkhold/program', blocks: [block], $schema: 'a.json' };

  it('is for an editor: it may be there, and nothing reads it', () => {
    expect(pointersOf(named)).toEqual([]);
    expect(pointersOf({ ...named, $schema: 7 })).toEqual([['/$schema', 'Expected a text in quotes. Found 7.']]);
  });
});
