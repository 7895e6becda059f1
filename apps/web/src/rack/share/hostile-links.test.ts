// More than five hundred broken and hostile links from a kept seed: each gets its own words, and unfolds no more than it may.
import { largestProgramBytes } from '@larkhold/engine';
import { afterAll, describe, expect, it, vi } from 'vitest';
import { goodFile } from '../../../../../tests/fixtures/program/hostile-files.ts';
import { goodPayload, hostileLinkKinds } from '../../../../../tests/fixtures/program/hostile-links.ts';

const unfolded = { bytes: 0 };

// The modules of all unit tests are kept for the next file, so the counting one is put in for this file alone.
vi.resetModules();
vi.doMock('fflate', async (original) => {
  const fflate = await original<typeof import('fflate')>();
  /** Counts what comes out, so that a bomb is seen. */
  class CountingInflate extends fflate.Inflate {
    constructor(take: ConstructorParameters<typeof fflate.Inflate>[0]) {
      super((piece, isLast) => {
        unfolded.bytes += piece.length;
        (take as (piece: Uint8Array, isLast: boolean) => void)(piece, isLast);
      });
    }
  }
  return { ...fflate, Inflate: CountingInflate };
});
const { parsePayload, pieceBytes } = await import('./program-link.ts');
afterAll(() => {
  vi.doUnmock('fflate');
  vi.resetModules();
});

/** Deflate grows what goes in at most 1032 times (zlib's technical details: "maximum compression factor"). */
const mostUnfolded = largestProgramBytes + pieceBytes * 1032;

describe('a hostile link', () => {
  const times: { kind: string; ms: number }[] = [];
  // measured and told, never judged: the machine may be busy with other things
  afterAll(() => {
    times.sort((a, b) => b.ms - a.ms);
    const [slowest, middle] = [times[0], times[Math.floor(times.length / 2)]].map((time) => time?.ms.toFixed(1));
    console.info(`${times.length} hostile links, median ${middle} ms, slowest ${slowest} ms (${times[0]?.kind})`);
  });

  it('is one of more than five hundred', () => {
    expect(hostileLinkKinds.flatMap(({ payloads }) => payloads()).length).toBeGreaterThan(500);
  }, 60_000);

  it('would open if it were not broken', () => {
    unfolded.bytes = 0;
    expect(parsePayload(goodPayload)).toMatchObject({ ok: true, program: { title: 'Attic mornings' } });
    expect(unfolded.bytes).toBe(goodFile.length); // so that the counting below counts
  });

  it.each(hostileLinkKinds)(
    'gets its words: $kind',
    ({ kind, payloads, says }) => {
      for (const payload of payloads()) {
        unfolded.bytes = 0;
        const start = performance.now();
        const read = parsePayload(payload);
        times.push({ kind, ms: performance.now() - start });
        expect(unfolded.bytes).toBeLessThanOrEqual(mostUnfolded);
        if (says === 'opens') {
          expect(read).toMatchObject({ ok: true });
          continue;
        }
        if (read.ok) throw new Error(`opened: ${payload.slice(0, 300)}`);
        expect(read.message).toMatch(says);
        expect(read.message).toMatch(/^[A-Z].{10,}[.]$/s);
        expect(read.message.length).toBeLessThan(400);
      }
      expect(({} as Record<string, unknown>).ok).toBeUndefined();
      expect('hit' in globalThis).toBe(false);
    },
    60_000,
  );
});
