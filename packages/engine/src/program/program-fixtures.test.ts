// A file of every version that ever shipped, frozen: it must open for ever. Of the version now written, byte-identical.
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { formatProgram } from './format-program.ts';
import { programMigrations, programVersion } from './migrate-program.ts';
import { parseProgram } from './parse-program.ts';

const folder = new URL('../../../../tests/fixtures/program/', import.meta.url);
const files = readdirSync(folder).filter((name) => /^v\d+-.*\.drill\.json$/.test(name));

describe('the frozen program files', () => {
  it('are there for every version', () => {
    const versions = new Set(files.map((name) => Number(/^v(\d+)/.exec(name)?.[1])));
    for (let version = 1; version <= programVersion; version++) expect(versions).toContain(version);
  });

  it.each(files)('reads %s', (name) => {
    const text = readFileSync(new URL(name, folder), 'utf8');
    const parsed = parseProgram(text);
    expect(parsed.ok ? [] : parsed.problems).toEqual([]);
    if (!parsed.ok) return;
    expect(parsed.program.version).toBe(programVersion);
    // The version now written has no step that could change it, so it comes out as it went in.
    if (name.startsWith(`v${programVersion}-`)) expect(formatProgram(parsed.program)).toBe(text);
  });
});

describe('a file of an older version', () => {
  // Two versions that never were, before the first: what a step does that changes a key.
  const steps = {
    ...programMigrations,
    [-1]: ({ name, ...file }: Record<string, unknown>) => ({ ...file, title: name }),
    0: ({ drawn, ...file }: Record<string, unknown>) => ({ ...file, tool: drawn === 'rubber' ? 'band' : drawn }),
  };
  const text = readFileSync(new URL('v1-weekday-holding.drill.json', folder), 'utf8');
  const older = text
    .replace('"version": 1', '"version": -1')
    .replace('"title"', '"name"')
    .replace('"tool": "bow"', '"drawn": "rubber"');

  it('goes through every step, and is read and written as one of today', () => {
    const parsed = parseProgram(older, steps);
    const today = text.replace('"version": 1', '"version": 2').replace('"tool": "bow"', '"tool": "band"');
    expect(parsed.ok && formatProgram(parsed.program)).toBe(today);
    const between = parseProgram(older.replace('-1', '0').replace('"name"', '"title"'), steps);
    expect(between).toEqual(parsed);
  });

  it('is refused where no step leads on, and what is wrong in it has its place', () => {
    expect(parseProgram(older)).toMatchObject({
      problems: [{ pointer: '/version', line: 3, message: 'Expected "version", a whole number from 1.' }],
    });
    expect(() => parseProgram(older, { ...programMigrations, [-1]: steps[-1] })).toThrow(RangeError); // a release that lost a step
    const broken = parseProgram(older.replace('"hold": 30', '"hold": 500'), steps);
    expect(broken).toMatchObject({
      problems: [{ pointer: '/blocks/0/hold', message: expect.stringContaining('180') }],
    });
    expect(broken.ok ? 0 : broken.problems[0]?.line).toBeGreaterThan(15);
  });

  it('of version 1 is the same program in version 2, byte for byte but for the number', () => {
    const parsed = parseProgram(text);
    expect(parsed.ok && formatProgram(parsed.program)).toBe(text.replace('"version": 1', '"version": 2'));
  });

  it('of version 1 has no keys of version 2', () => {
    const test = text.replace('"tool"', '"kind": "test",\n  "tool"');
    expect(parseProgram(test)).toMatchObject({
      ok: false,
      problems: expect.arrayContaining([
        expect.objectContaining({
          ...{ pointer: '/version', line: 3, column: 14 },
          message: expect.stringContaining('Write "version": 2'),
        }),
      ]),
    });
  });

  it('is older than one that is too new', () => {
    expect(parseProgram(text.replace('"version": 1', '"version": 3'), steps)).toMatchObject({
      problems: [{ message: expect.stringContaining('Update Larkhold') }],
    });
  });
});
