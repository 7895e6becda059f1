import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { anyProgram } from '../../../../tests/fixtures/program/any-program.ts';
import { valuesOf } from '../../../../tests/fixtures/program/any-value.ts';
import { canonicalOf } from './canonical.ts';
import { formatProgram } from './format-program.ts';
import { parseProgram } from './parse-program.ts';
import { programSchema } from './program.ts';
import { programJsonSchema } from './program-json-schema.ts';

/** The path of every key in a value or, by its `properties`, in a JSON Schema. */
function keyPaths(value: unknown, isSchema: boolean, path = '', found = new Set<string>()): Set<string> {
  if (Array.isArray(value)) for (const entry of value) keyPaths(entry, isSchema, path, found);
  else if (typeof value === 'object' && value !== null) {
    for (const [key, inner] of Object.entries(value)) {
      const isKey = !isSchema;
      if (isSchema && key === 'properties') {
        for (const [name, schema] of Object.entries(inner as object)) {
          found.add(`${path}/${name}`);
          keyPaths(schema, true, `${path}/${name}`, found);
        }
      } else if (isKey) {
        found.add(`${path}/${key}`);
        keyPaths(inner, false, `${path}/${key}`, found);
      } else if (['items', 'anyOf', 'oneOf'].includes(key)) keyPaths(inner, true, path, found);
    }
  }
  return found;
}

describe('any valid program', () => {
  it('is read back as it was written, and writes the same text again', () => {
    fc.assert(
      fc.property(anyProgram, (program) => {
        const text = formatProgram(program);
        const parsed = parseProgram(text);

        expect(parsed).toEqual({ ok: true, program });
        expect(parsed.ok && formatProgram(parsed.program)).toBe(text);
      }),
      { numRuns: 60, seed: 20_261_125 },
    );
  }, 60_000);

  it('is drawn with every key that the schema knows, and keeps each of them in its text', () => {
    const known = keyPaths(programJsonSchema, true);
    const programs = fc.sample(anyProgram, { seed: 20_261_127, numRuns: 1_000 });
    const drawn = programs.reduce((found, program) => keyPaths(program, false, '', found), new Set<string>());
    expect([...drawn].sort()).toEqual([...known].sort());
    const written = programs.reduce(
      (found, program) => keyPaths(JSON.parse(formatProgram(program)), false, '', found),
      new Set<string>(),
    );
    expect([...written].sort()).toEqual([...known].sort());
  });
});

describe('a key that is added to the schema', () => {
  const block = programSchema.shape.blocks.element.extend({
    mirror: z.enum(['left', 'right']).default('left'),
    pauses: z
      .array(z.strictObject({ atSecond: z.int().min(0).max(60), note: z.string().max(20).optional() }))
      .max(3)
      .optional(),
  });
  const grown = programSchema.extend({ blocks: z.array(block).min(1).max(2) });

  it('is drawn and written without a line of code', () => {
    const special = { 'blocks[].ladder': fc.constant(undefined) };
    const drawn = fc.sample(valuesOf(grown, special), { seed: 20_261_128, numRuns: 40 });
    const seen = { mirror: 0, pauses: 0 };
    for (const program of drawn) {
      const text = JSON.stringify(canonicalOf(grown, program));
      expect(z.parse(grown, JSON.parse(text))).toEqual(z.parse(grown, program));
      if (text.includes('"mirror":"right"')) seen.mirror++;
      if (text.includes('"atSecond"')) seen.pauses++;
      expect(text).not.toContain('"mirror":"left"'); // the default is left out
    }
    expect(seen.mirror).toBeGreaterThan(5);
    expect(seen.pauses).toBeGreaterThan(5);
  });
});
