// A file of every version that ever shipped, frozen: it must open for ever. Of the version now written, byte-identical.
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { formatProgram } from './format-program.ts';
import { programVersion } from './migrate-program.ts';
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
    if (name.startsWith(`v${programVersion}-`)) expect(formatProgram(parsed.program)).toBe(text);
  });
});
