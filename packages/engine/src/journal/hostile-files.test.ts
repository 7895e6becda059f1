import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { formatHandOver, handOverSchema, parseHandOver } from './hand-over.ts';
import { journalSchema } from './journal.ts';
import { formatJournal, parseJournal } from './journal-file.ts';

// More, and other ones each time, with FUZZ_RUNS=100000.
const { FUZZ_RUNS } = process.env;
const runs = FUZZ_RUNS === undefined ? { numRuns: 1500, seed: 20261125 } : { numRuns: Number(FUZZ_RUNS) };
const read = (name: string): string =>
  readFileSync(new URL(`../../../../tests/fixtures/journal/${name}`, import.meta.url), 'utf8');

/** A change that a bad disk, a bad mailer or a bad person makes to a text. */
const damage = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  length: fc.nat(40),
  instead: fc.oneof(
    fc.constantFrom(
      '',
      '"',
      '{',
      '}',
      '[',
      ']',
      ',',
      ':',
      '\\',
      '\\ud800',
      '\0',
      '\uFEFF',
      'null',
      'true',
      '-0',
      '1e999',
      '1e-7',
    ),
    fc.constantFrom(
      '"__proto__":{"x":1},',
      '"constructor":null,',
      '"removed":true,',
      '"version":2',
      '[[[[[[',
      '9007199254740993',
    ),
    fc.constantFrom('<script>alert(1)</script>', '"2026-02-30"', '"2026-W99"', '"larkhold/program"'),
    fc.json({ maxDepth: 3 }),
    fc.string({ unit: 'binary', maxLength: 8 }),
  ),
});
const damaged = (text: string): fc.Arbitrary<string> =>
  fc.array(damage, { minLength: 1, maxLength: 4 }).map((damages) =>
    damages.reduce((now, { at, length, instead }) => {
      const from = Math.floor(at * now.length);
      return now.slice(0, from) + instead + now.slice(from + length);
    }, text),
  );

/** A file that is JSON still, with one value or key of it exchanged for another. */
const misfilled = (text: string): fc.Arbitrary<string> =>
  fc
    .tuple(fc.nat(), fc.jsonValue({ maxDepth: 2 }), fc.option(fc.string({ maxLength: 12 })))
    .map(([seed, value, key]) => {
      const file: unknown = JSON.parse(text);
      const places: [Record<string, unknown>, string][] = [];
      const walk = (inner: unknown): void => {
        if (typeof inner !== 'object' || inner === null) return;
        for (const name of Object.keys(inner)) {
          places.push([inner as Record<string, unknown>, name]);
          walk((inner as Record<string, unknown>)[name]);
        }
      };
      walk(file);
      const [holder, name] = places[seed % places.length] ?? [{}, ''];
      holder[key ?? name] = value;
      return JSON.stringify(file);
    });

const anyText = (text: string): fc.Arbitrary<string> =>
  fc.oneof(damaged(text), misfilled(text), fc.json(), fc.string({ unit: 'binary', maxLength: 200 }));

it('a journal file of any kind is read or refused, never thrown at', () => {
  fc.assert(
    fc.property(anyText(read('v1.journal.json')), (text) => {
      const result = parseJournal(text);
      if (!result.ok) {
        expect(result.problems.length).toBeGreaterThan(0);
        for (const { pointer, message } of result.problems) {
          expect(pointer === '' || pointer.startsWith('/')).toBe(true);
          expect(message).not.toBe('');
        }
        return;
      }
      expect(journalSchema.safeParse(result.journal).success).toBe(true);
      const again = formatJournal(result.journal, result.madeAt);
      const reread = parseJournal(again);
      expect(reread.ok && formatJournal(reread.journal, reread.madeAt)).toBe(again);
    }),
    runs,
  );
  expect(Object.keys(Object.prototype)).toEqual([]);
});

it('a hand-over of any kind is read or refused, never thrown at', () => {
  fc.assert(
    fc.property(anyText(read('v1.hand-over.json')), (text) => {
      const result = parseHandOver(text);
      if (!result.ok) {
        expect(result.problems.length).toBeGreaterThan(0);
        return;
      }
      expect(handOverSchema.safeParse(result.handOver).success).toBe(true);
      const again = formatHandOver(result.handOver);
      const reread = parseHandOver(again);
      expect(reread.ok && formatHandOver(reread.handOver)).toBe(again);
    }),
    runs,
  );
});
