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

/** Every hostile link gets its words, and throws nothing. */
function refusal(payload: string): string {
  const read = parsePayload(payload);
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
      expect(refusal(payload.slice(0, length))).toMatch(/cut off|no program|characters/);
    }),
    { seed: 512, numRuns: 200 },
  );
}, 30_000);

/** The largest program there can be: every text and list as long as may be, of characters in no order. */
function largestProgram(): Program {
  let state = 1;
  const chance = () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
  // three bytes each, out of twenty thousand: nothing that deflate could fold
  const noise = (length: number) =>
    Array.from({ length }, () => String.fromCharCode(0x4e00 + Math.floor(chance() * 20_000))).join('');
  const lines = (count: number, length: number) => Array.from({ length: count }, () => noise(length));
  const resets = () => ({ hold: 1 + Math.round(chance() * 100) / 10 });
  const rungs = Array.from({ length: 20 }, (_, at) =>
    at % 2 === 0
      ? { raise: 'hold' as const, by: 0.1 + chance(), until: 20 + at }
      : { raise: 'addedWeight' as const, by: 0.1 + chance(), until: 2 + at + chance(), resets: resets() },
  ).map((rung) => (rung.raise === 'hold' ? { ...rung, by: Math.round(rung.by * 10) / 10 } : rung));
  const block = (): Program['blocks'][number] => ({
    ...{ title: noise(120), drill: 'flexibility', sets: 1, reps: 1, draw: 12.3, hold: 10.1, letDown: 12.3 },
    ...{
      rest: { timesHold: chance() * 20 },
      setRest: 1.1,
      letDownTo: 'set-up',
      hand: 'opposite',
      addedWeight: chance(),
    },
    calls: lines(12, 80),
    ladder: {
      rungs,
      climbAfter: { cleanSessions: 13, effortAtMost: chance() * 10 },
      stepDownAfter: { missedShare: chance(), sessions: 7 },
      deload: { everyWeeks: 11, keep: 0.2 + chance() / 2 },
      layoff: Array.from({ length: 20 }, (_, at) => ({ days: 100 + at * 3, stepsDown: 1 + Math.floor(chance() * 50) })),
      weeklyGrowth: 1 + chance(),
    },
  });
  return {
    ...{ format: 'larkhold/program', version: 2, id: '6f1d1a52-1f0a-4c8e-9a31-0d2b6a7e2001', tool: 'light-bow' },
    ...{ title: noise(120), author: noise(120), about: noise(4000), source: noise(1000) },
    ...{ warmUp: lines(30, 200), coolDown: lines(30, 200), blocks: Array.from({ length: 20 }, block) },
  };
}

test('the largest program fits a link', () => {
  const largest = largestProgram();
  const parsed = parseProgram(formatProgram(largest));
  expect(parsed.ok ? [] : parsed.problems).toEqual([]);
  const payload = formatPayload(largest);
  expect(payload.length).toBeGreaterThan(100_000); // so that the limit is tried
  expect(payload.length).toBeLessThan(longestPayload);
  expect(parsePayload(payload)).toMatchObject({ ok: true });
});

test('each kind of broken link has its own words', () => {
  const file = JSON.parse(formatProgram(program)) as Record<string, unknown>;
  const changed = (change: object) => packed(JSON.stringify({ ...file, ...change }));
  expect(refusal('')).toMatch(/no program/);
  expect(refusal('a'.repeat(longestPayload + 1))).toMatch(/too long/);
  expect(refusal('%E0%A4%A')).toMatch(/characters/);
  expect(refusal('<img src=x onerror=alert(1)>')).toMatch(/characters/);
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
