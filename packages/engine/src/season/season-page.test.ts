import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseSeason } from './parse-season.ts';
import { seasonJsonSchema } from './season-json-schema.ts';

const page = readFileSync(new URL('../../../../docs/season.md', import.meta.url), 'utf8');
const examples = [...page.matchAll(/^```json\n(.*?)^```$/gms)].map((match) => match[1] ?? '');

/** Every key that the schema knows anywhere. */
function keysOf(schema: unknown, found = new Set<string>()): Set<string> {
  if (typeof schema !== 'object' || schema === null) return found;
  if ('properties' in schema) for (const key of Object.keys(schema.properties as object)) found.add(key);
  for (const inner of Object.values(schema)) keysOf(inner, found);
  return found;
}

describe('the season page', () => {
  it('has an example that is valid', () => {
    expect(examples).toHaveLength(1);
    const parsed = parseSeason(examples[0]!);
    expect(parsed.ok ? [] : parsed.problems).toEqual([]);
  });

  it('names every key of the schema', () => {
    const known = keysOf(seasonJsonSchema);
    expect(known.size).toBeGreaterThan(30);
    for (const key of known) expect(page.includes(`\`${key}\``), key).toBe(true);
  });
});
