import { deflateRawSync, gzipSync as gzip, inflateRawSync } from 'node:zlib';
import { builtInPrograms, formatProgram, type Program, parseProgram } from '@larkhold/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatLink, formatPayload, longestPayload, parsePayload, payloadIn } from './program-link.ts';

const program = builtInPrograms[0]!;
const words = fc.string({ unit: 'binary', maxLength: 200 });
const anyProgram: fc.Arbitrary<Program> = fc
  .tuple(
    fc.constantFrom(...builtInPrograms),
    words,
    fc.string({ minLength: 1, maxLength: 60, unit: 'grapheme' }).filter((text) => text.length <= 120),
  )
  .map(([built, about, title]) => ({ ...built, about, title }))
  .filter((any) => parseProgram(formatProgram(any)).ok);
/** Independent of what writes the links: node's own zlib. */
const packed = (bytes: string | Buffer) => deflateRawSync(bytes).toString('base64url');

/** Every hostile link gets its words, soon, and throws nothing. */
function refusal(payload: string): string {
  const start = process.cpuUsage(); // the machine may be busy with other things; its own work is what counts
  const read = parsePayload(payload);
  const { user, system } = process.cpuUsage(start);
  expect((user + system) / 1000).toBeLessThan(100);
  if (read.ok) throw new Error('a hostile link was opened');
  expect(read.message).toMatch(/^[A-Z].{10,400}\.$/s);
  return read.message;
}

test('a program comes out of a link as it went in', () => {
  fc.assert(
    fc.property(anyProgram, (any) => {
      const payload = formatPayload(any);
      expect(payload).toMatch(/^[\w-]+$/);
      const read = parsePayload(payload);
      expect(read.ok && formatProgram(read.program)).toBe(formatProgram(any));
    }),
    { seed: 511, numRuns: 100 },
  );
}, 30_000);

test('a link is raw deflate and base64url, as others read it', () => {
  const text = inflateRawSync(Buffer.from(formatPayload(program), 'base64url')).toString('utf8');
  expect(JSON.parse(text)).toEqual(JSON.parse(formatProgram(program)));
  expect(parsePayload(packed(formatProgram(program)))).toMatchObject({ ok: true });
});

test('the link is the address and the fragment, and is found again in what was pasted', () => {
  const link = formatLink('https://example.org/larkhold/#/rack/1', program);
  expect(link).toMatch(/^https:\/\/example\.org\/larkhold\/#\/open\/[\w-]+$/);
  expect(payloadIn(` ${link}\n`)).toBe(formatPayload(program));
  expect(payloadIn('{ "format": "larkhold/program" }')).toBeUndefined();
});

test('a cut-off or changed link says so', () => {
  const payload = formatPayload(program);
  fc.assert(
    fc.property(fc.integer({ min: 0, max: payload.length - 3 }), (length) => {
      expect(refusal(payload.slice(0, length))).toMatch(/cut off|no program|signs/);
    }),
    { seed: 512, numRuns: 200 },
  );
}, 30_000);

test('a bomb is met before it unfolds', () => {
  for (const megabytes of [2, 50, 200]) {
    expect(refusal(packed(Buffer.alloc(megabytes * 1_048_576)))).toMatch(/1 MiB/);
  }
  expect(refusal(packed(`${formatProgram(program)}${' '.repeat(2_000_000)}`))).toMatch(/1 MiB/);
});

test('each kind of broken link has its own words', () => {
  const file = JSON.parse(formatProgram(program)) as Record<string, unknown>;
  const changed = (change: object) => packed(JSON.stringify({ ...file, ...change }));
  expect(refusal('')).toMatch(/no program/);
  expect(refusal('a'.repeat(longestPayload + 1))).toMatch(/too long/);
  expect(refusal('%E0%A4%A')).toMatch(/signs/);
  expect(refusal('<img src=x onerror=alert(1)>')).toMatch(/signs/);
  expect(refusal(gzip('{}').toString('base64url'))).toMatch(/cut off|text/);
  expect(refusal(packed(Buffer.from([0xff, 0xfe, 0x00])))).toMatch(/not hold text/);
  expect(refusal(packed('[]'))).toMatch(/not valid/);
  expect(refusal(changed({ version: 99 }))).toMatch(/version 99/);
  expect(refusal(changed({ format: 'else/where' }))).toMatch(/not a program/);
  expect(refusal(packed(formatProgram(program).replace('"version"', '"__proto__": {}, "version"')))).toMatch(
    /__proto__/,
  );
  expect(refusal(packed(`${'['.repeat(100_000)}`))).toMatch(/not valid/);
  expect(refusal(packed(formatProgram(program).replace(/"hold": \d+/, '"hold": 1e999')))).toMatch(/not valid/);
});

test('whatever is in a link, the answer is a program or words', () => {
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        fc.base64String(),
        fc.uint8Array().map((bytes) => packed(Buffer.from(bytes))),
        fc.json().map(packed),
      ),
      (payload) => {
        refusal(payload);
      },
    ),
    { seed: 513, numRuns: 500 },
  );
}, 30_000);
