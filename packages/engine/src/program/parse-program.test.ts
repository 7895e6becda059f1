import { describe, expect, it } from 'vitest';
import { builtInPrograms } from './built-in-programs.ts';
import { formatProgram } from './format-program.ts';
import { largestProgramBytes, parseProgram } from './parse-program.ts';
import { migrateFile } from './read-placed-file.ts';

const good = {
  format: 'larkhold/program',
  version: 1,
  title: 'Weekday holding',
  tool: 'bow',
  blocks: [
    {
      title: 'Holds',
      drill: 'holding',
      sets: 2,
      reps: 5,
      draw: 3,
      hold: 30,
      letDown: 3,
      rest: { timesHold: 2 },
      setRest: 120,
    },
  ],
};

function problemsOf(text: string) {
  const parsed = parseProgram(text);
  return parsed.ok ? [] : parsed.problems;
}

const withBlock = (change: object) => JSON.stringify({ ...good, blocks: [{ ...good.blocks[0], ...change }] }, null, 2);

describe('parseProgram', () => {
  it('fills in the defaults', () => {
    const parsed = parseProgram(JSON.stringify(good));
    expect(parsed.ok && parsed.program.blocks[0]).toMatchObject({ hand: 'usual', addedWeight: 0, letDownTo: 'rest' });
  });

  it.each(builtInPrograms.map((program) => [program.title, program] as const))(
    'reads %s back from its canonical text',
    (_, program) => {
      const text = formatProgram(program);
      const parsed = parseProgram(text);
      expect(parsed).toEqual({ ok: true, program });
      expect(parsed.ok && formatProgram(parsed.program)).toBe(text);
    },
  );

  it('names every problem with line, column and pointer', () => {
    const problems = problemsOf(withBlock({ reps: 0, hold: 500, sparkle: true, rest: { seconds: -1 } }));
    expect(problems.map(({ pointer }) => pointer)).toEqual([
      '/blocks/0/reps',
      '/blocks/0/hold',
      '/blocks/0/rest/seconds',
      '/blocks/0/sparkle',
    ]);
    expect(problems[0]).toEqual({
      pointer: '/blocks/0/reps',
      line: 11,
      column: 15,
      fault: { rule: 'atLeast', limit: 1 },
      found: { kind: 'text', found: '0' },
      message: 'Expected at least 1. Found 0.',
    });
    expect(problems[3]).toMatchObject({ line: 19, column: 7 });
  });

  it('points at the object that lacks a key', () => {
    const { title: _, ...rest } = good;
    expect(problemsOf(JSON.stringify(rest))).toEqual([
      {
        ...{ pointer: '/title', line: 1, column: 1, missing: 'title', fault: { rule: 'type', type: 'string' } },
        message: 'The key "title" is missing. Expected a text in quotes.',
      },
    ]);
  });

  it.each([
    ['an empty text', '', /empty/],
    ['a list', '[]', /object/],
    ['another format', '{"format":"other/thing","version":1}', /not a program/],
    ['a newer version', '{"format":"larkhold/program","version":3}', /version 3.*Update/],
    ['a trailing comma', '{"format":"larkhold/program",}', /not JSON/],
    ['a key twice', '{"format":"larkhold/program","format":"x"}', /twice/],
    ['a number without end', '{"format":"larkhold/program","version":1e999}', /too large/],
    ['half a character', '{"format":"larkhold/program","title":"\\ud800"}', /surrogate/],
    ['a NUL', '{"format":"larkhold/program","title":"\\u0000"}', /U\+0000/],
    ['brackets without end', '['.repeat(500_000), /levels deep/],
    ['a file too large', ' '.repeat(largestProgramBytes + 1), /1 MiB/],
  ])('refuses %s with its own message', (_, text, message) => {
    expect(problemsOf(text)[0]?.message).toMatch(message);
  });

  it('reads minus zero as zero, and refuses it where zero is refused', () => {
    const text = withBlock({ addedWeight: 7, setRest: 7 }).replaceAll(': 7', ': -0');
    const parsed = parseProgram(text);
    expect(parsed.ok && parsed.program.blocks[0]).toMatchObject({ addedWeight: 0, setRest: 0 });
    expect(parsed.ok && formatProgram(parsed.program)).toContain('"setRest": 0\n');
    expect(problemsOf(withBlock({ draw: 7 }).replace(': 7', ': -0'))).toMatchObject([
      { pointer: '/blocks/0/draw', message: 'Expected at least 0.5. Found 0.' },
    ]);
  });

  it('treats __proto__ as an unknown key', () => {
    const problems = problemsOf(`{"format":"larkhold/program","version":1,"__proto__":{"title":"x"}}`);
    expect(problems.map(({ pointer }) => pointer)).toContain('/__proto__');
  });

  it.each([
    ['a set rest that is needed', { setRest: undefined }, '/blocks/0'],
    ['hundredths of a second', { hold: 30.25 }, '/blocks/0/hold'],
    [
      'a rung that cannot be climbed',
      { ladder: { rungs: [{ raise: 'hold', by: 5, until: 20 }] } },
      '/blocks/0/ladder/rungs/0/until',
    ],
    [
      'a reset without an earlier rung',
      { ladder: { rungs: [{ raise: 'addedWeight', by: 2, until: 6, resets: { hold: 30 } }] } },
      '/blocks/0/ladder/rungs/0/resets/hold',
    ],
    [
      'layoff days that fall',
      {
        ladder: {
          rungs: [{ raise: 'hold', by: 5, until: 45 }],
          layoff: [
            { days: 9, stepsDown: 1 },
            { days: 3, stepsDown: 2 },
          ],
        },
      },
      '/blocks/0/ladder/layoff/1/days',
    ],
    ['more than four hours', { sets: 20, reps: 60, hold: 180 }, '/blocks'],
  ])('refuses %s', (_, change, pointer) => {
    expect(problemsOf(withBlock(change)).map((problem) => problem.pointer)).toEqual([pointer]);
  });
});

describe('migrateFile', () => {
  it('walks step by step, and says which step is missing', () => {
    const steps = {
      1: (file: Record<string, unknown>) => ({ ...file, a: 1 }),
      2: (file: Record<string, unknown>) => ({ ...file, b: 2 }),
    };
    expect(migrateFile({ version: 1 }, steps, 3)).toEqual({ version: 3, a: 1, b: 2 });
    expect(() => migrateFile({ version: 1 }, {}, 2)).toThrow(RangeError);
  });
});
