import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseProgram } from './parse-program.ts';
import { programJsonSchema } from './program-json-schema.ts';

const page = readFileSync(new URL('../../../../docs/program-file.md', import.meta.url), 'utf8');
const examples = [...page.matchAll(/^```json\n(.*?)^```$/gms)].map((match) => match[1] ?? '');
const tableKeys = [...page.matchAll(/^\| (`.*?) \|/gm)]
  .flatMap((row) => [...(row[1] ?? '').matchAll(/`([$\w]+)`/g)])
  .map(([, key]) => key);

/** Every key that the schema knows anywhere. */
function keysOf(schema: unknown, found = new Set<string>()): Set<string> {
  if (typeof schema !== 'object' || schema === null) return found;
  if ('properties' in schema) for (const key of Object.keys(schema.properties as object)) found.add(key);
  for (const inner of Object.values(schema)) keysOf(inner, found);
  return found;
}

describe('the program file page', () => {
  it('has four examples', () => expect(examples).toHaveLength(4));

  it.each(examples)('has an example that is valid', (text) => {
    const parsed = parseProgram(text);
    expect(parsed.ok ? [] : parsed.problems).toEqual([]);
  });

  it('has every key of the schema, and no other in its table', () => {
    const known = keysOf(programJsonSchema);
    for (const key of known) expect(page.includes(`\`${key}\``) || page.includes(`"${key}"`), key).toBe(true);
    expect(tableKeys.length).toBeGreaterThan(25);
    for (const key of tableKeys) expect(known).toContain(key);
  });
});
