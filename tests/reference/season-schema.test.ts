// The published schema of the season file (JSON Schema 2020-12) as Ajv, an independent validator, reads it, against this reader.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { formatSeason, parseSeason, seasonJsonSchema } from '@larkhold/engine';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anySeason } from '../fixtures/season/any-season.ts';

// the schema's own patterns say what an id, a day and an instant are
const ajv = new Ajv2020({ strict: true, formats: { uuid: true, date: true, 'date-time': true } });
const validate = ajv.compile(seasonJsonSchema);
const fixture = readFileSync(new URL('../fixtures/season/v1-indoor-winter.season.json', import.meta.url), 'utf8');
const page = readFileSync(new URL('../../docs/season.md', import.meta.url), 'utf8');

/** What the schema is known not to say; the page lists the same under "What the schema cannot say". */
const knownWeaker = {
  'a stretch that ends before it begins': /before it begins/,
  'a lighter week after the last, or one named twice': /for the block has|is named twice\. Keep/,
  'a session outside of its stretch, or a day named twice': /^Expected a day from|Write its programs in one/,
  'more than 62 days': /at most 62 days/,
  'a year before 1900 or after 2999': /from 1900 to 2999/,
};

describe('the JSON Schema of the season file', () => {
  it('is the one in the package', () => {
    const packaged = createRequire(import.meta.url).resolve('@larkhold/engine/season.schema.json');
    expect(JSON.parse(readFileSync(packaged, 'utf8'))).toEqual(seasonJsonSchema);
  });

  it('accepts what the reader accepts', () => {
    expect(validate(JSON.parse(fixture))).toBe(true);
    fc.assert(
      fc.property(anySeason, (season) => {
        expect(validate(JSON.parse(formatSeason(season)))).toBe(true);
      }),
      { numRuns: 100, seed: 20_261_136 },
    );
  });

  it('agrees with the reader on a file with any one value changed, but for what it is known not to say', () => {
    const values = [
      null,
      true,
      -1,
      0,
      1,
      4,
      9,
      1.5,
      '',
      'x',
      'x'.repeat(121),
      '2026-11-02',
      '2026-02-30',
      [],
      {},
      undefined,
    ];
    const seen = { bothOpen: 0, bothRefuse: 0 };
    const places: { path: (string | number)[] }[] = [];
    const walk = (value: unknown, path: (string | number)[]) => {
      if (path.length > 0) places.push({ path });
      if (typeof value !== 'object' || value === null) return;
      for (const [key, inner] of Object.entries(value))
        walk(inner, [...path, Array.isArray(value) ? Number(key) : key]);
    };
    walk(JSON.parse(fixture), []);
    for (const { path } of places) {
      for (const value of values) {
        const file: unknown = JSON.parse(fixture);
        const parent = path.slice(0, -1).reduce((at, key) => (at as Record<string | number, unknown>)[key], file);
        (parent as Record<string | number, unknown>)[path.at(-1)!] = value;
        const text = JSON.stringify(file);
        const bySchema = validate(JSON.parse(text));
        const read = parseSeason(text);
        if (read.ok) expect(bySchema, text).toBe(true);
        if (read.ok) seen.bothOpen++;
        else if (!bySchema) seen.bothRefuse++;
        else {
          for (const { message } of read.problems) {
            expect(
              Object.values(knownWeaker).some((form) => form.test(message)),
              message,
            ).toBe(true);
          }
        }
      }
    }
    expect(seen.bothOpen).toBeGreaterThan(20);
    expect(seen.bothRefuse).toBeGreaterThan(500);
  });

  it('differs in what the page says that it differs in', () => {
    const section = /^## What the schema cannot say$(.*?)^## /ms.exec(page)?.[1] ?? '';
    const listed = [...section.matchAll(/^- (.*?)[;.]$/gm)].map(([, words]) => words);
    expect(listed).toEqual(Object.keys(knownWeaker));
  });
});
