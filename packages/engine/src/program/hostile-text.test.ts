// Five hundred broken texts from a kept seed. Whatever they are, the answer is a program or problems with a place, and never a throw.
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { parseProgram } from './parse-program.ts';

const folder = new URL('../../../../tests/fixtures/program/', import.meta.url);
const good = readFileSync(new URL('v2-weekday-holding.drill.json', folder), 'utf8');

const place = fc.nat({ max: good.length - 1 });
const putAt = (at: number, piece: string) => good.slice(0, at) + piece + good.slice(at);
const keys = [...good.matchAll(/^ *"\w+":/gm)].map((match) => match.index);
const numbers = [...good.matchAll(/(?<=: )\d+(\.\d+)?/g)].map((match) => ({
  at: match.index,
  length: match[0].length,
}));
const strings = [...good.matchAll(/(?<=: ")/g)].map((match) => match.index);

const pieces = [
  '\u0000',
  '\u0001',
  '\u001b',
  '\ud800',
  '\udfff',
  '\uFEFF',
  '\u2028',
  '\u00a0',
  '\r',
  ',',
  '//',
  '/*',
  '"',
  '\\',
];
const markup = [
  '<script>alert(1)</script>',
  '<img src=x onerror=alert(1)>',
  '\\u003csvg onload=x\\u003e',
  '&lt;b&gt;',
  ']]>',
];
const hostile = fc.oneof(
  place.map((at) => good.slice(0, at)),
  fc.tuple(place, fc.nat({ max: 6 })).map(([at, bit]) => {
    const flipped = String.fromCharCode(good.charCodeAt(at) ^ (1 << bit));
    return good.slice(0, at) + flipped + good.slice(at + 1);
  }),
  fc.constantFrom(...keys).map((at) => putAt(at, `${/ *"\w+"/.exec(good.slice(at))?.[0]}: 0,\n`)),
  fc
    .tuple(fc.constantFrom(...keys), fc.constantFrom('__proto__', 'constructor', 'prototype', 'toString'))
    .map(([at, key]) => putAt(at, `"${key}": { "title": "x", "ok": true },\n`)),
  fc.tuple(fc.constantFrom(...strings), fc.constantFrom(...markup)).map(([at, piece]) => putAt(at, piece)),
  fc
    .tuple(
      fc.constantFrom(...numbers),
      fc.constantFrom('1e999', '-1e999', '-0', '0x10', '01', '1.', 'NaN', '1e-999', '9007199254740993'),
    )
    .map(([{ at, length }, number]) => good.slice(0, at) + number + good.slice(at + length)),
  fc.tuple(place, fc.constantFrom(...pieces)).map(([at, piece]) => putAt(at, piece)),
  fc
    .constantFrom('\\u0000', '\\ud800', '\\udc00x', '\\u0008', '\\x')
    .chain((piece) => fc.constantFrom(...strings).map((at) => putAt(at, piece))),
  fc.constantFrom(`\uFEFF${good}`, `\uFEFF\uFEFF${good}`, good.replaceAll('\n', '\r\n'), good.replaceAll('\n', '\r')),
  fc
    .tuple(fc.constantFrom(...keys), fc.nat({ max: 5000 }), fc.constantFrom('[', '{"a":'))
    .map(([at, depth, open]) => putAt(at, `"deep": ${open.repeat(depth)}`)),
  fc.tuple(place, place).map(([from, to]) => good.slice(0, from) + good.slice(to)),
  fc.string({ unit: 'binary', maxLength: 200 }),
  fc.json(),
);

function readsAsJson(text: string): boolean {
  try {
    JSON.parse(text.replace(/^\uFEFF/, ''));
    return true;
  } catch {
    return false;
  }
}

it('answers any text with a program or with problems that have a place in it', () => {
  const seen = { programs: 0, problems: 0 };
  fc.assert(
    fc.property(hostile, (text) => {
      const parsed = parseProgram(text);
      if (parsed.ok) {
        seen.programs++;
        // the platform's own reader of JSON, ECMA-262 section 25.5.1, is the second opinion
        expect(readsAsJson(text)).toBe(true);
        expect(Object.getPrototypeOf(parsed.program)).toBe(Object.prototype);
        expect(JSON.stringify(parsed.program)).not.toMatch(/__proto__|"constructor"/);
        return;
      }
      seen.problems++;
      const lines = text.split(/\r\n?|\n/);
      expect(parsed.problems.length).toBeGreaterThan(0);
      for (const { pointer, line, column, message } of parsed.problems) {
        expect(pointer).toMatch(/^(\/|$)/);
        expect(line).toBeGreaterThanOrEqual(1);
        expect(line).toBeLessThanOrEqual(lines.length);
        expect(column).toBeGreaterThanOrEqual(1);
        expect(column).toBeLessThanOrEqual((lines[line - 1]?.length ?? 0) + 2);
        expect(message).toMatch(/^\S.*[.]$/s);
      }
    }),
    { numRuns: 500, seed: 1_120_541 },
  );
  expect(({} as Record<string, unknown>).title).toBeUndefined();
  expect(seen.programs).toBeGreaterThan(20); // markup, a byte order mark and other line ends are only text
  expect(seen.problems).toBeGreaterThan(250);
});
