// More than five hundred broken and hostile files, as bytes, from a kept seed: each gets its own words, and the rack stays as it is.
import {
  builtInPrograms,
  formatProgram,
  largestProgramBytes,
  parseProgram,
  type ReadProgramFile,
  readProgramFile,
} from '@larkhold/engine';
import { afterAll, describe, expect, it } from 'vitest';
import { goodFile, hostileKinds, utf8 } from '../../../../tests/fixtures/program/hostile-files.ts';
import { decodeProgramFile } from './decode-program-file.ts';

const rack = Object.freeze([...builtInPrograms]);
const rackBefore = rack.map(formatProgram).join('');

async function open(file: Blob): Promise<ReadProgramFile> {
  const decoded = await decodeProgramFile(file);
  if (!decoded.ok) return { kind: 'broken', name: 'a', problems: [decoded.problem] };
  return readProgramFile('a', decoded.text, rack, () => 'new');
}
const blobOf = (bytes: Uint8Array) => new Blob([new Uint8Array(bytes)]);

/** What a harmless file says by the platform's own reader of JSON; 0 has no sign in it, as in ECMA-262's JSON.stringify. */
const plainly = (file: Uint8Array): object =>
  JSON.parse(JSON.stringify(JSON.parse(new TextDecoder().decode(file)))) as object;

describe('a hostile file', () => {
  const times: { kind: string; ms: number }[] = [];
  // measured and told, never judged: the machine may be busy with other things
  afterAll(() => {
    times.sort((a, b) => b.ms - a.ms);
    const [slowest, middle] = [times[0], times[Math.floor(times.length / 2)]].map((time) => time?.ms.toFixed(1));
    console.info(`${times.length} hostile files, median ${middle} ms, slowest ${slowest} ms (${times[0]?.kind})`);
  });

  it('would open if it were not broken', async () => {
    const read = await open(blobOf(utf8(goodFile)));
    expect(read.kind === 'new' && formatProgram(read.program)).toBe(goodFile);
  });

  it.each(hostileKinds)(
    'gets its words: $kind',
    async ({ kind, files, says }) => {
      for (const file of files()) {
        const blob = blobOf(file);
        const start = performance.now();
        const read = await open(blob);
        times.push({ kind, ms: performance.now() - start });
        if (says === 'opens') {
          if (read.kind !== 'new') throw new Error(`not opened: ${new TextDecoder().decode(file.slice(0, 300))}`);
          expect(read.program).toMatchObject(plainly(file)); // nothing is lost
          const canonical = formatProgram(read.program);
          expect(parseProgram(canonical)).toEqual({ ok: true, program: read.program });
          expect(canonical).not.toMatch(/: -/);
          continue;
        }
        if (read.kind !== 'broken') throw new Error(`opened: ${new TextDecoder().decode(file.slice(0, 300))}`);
        expect(read.problems.map(({ message }) => message).join('\n')).toMatch(says);
        for (const { message, line, column } of read.problems) {
          expect(message).toMatch(/^[A-Z].{10,}[.]$/s);
          expect(message.length).toBeLessThan(300);
          expect(Math.min(line, column)).toBeGreaterThan(0);
        }
      }
      expect(rack.map(formatProgram).join('')).toBe(rackBefore);
      expect(({} as Record<string, unknown>).ok).toBeUndefined();
      expect('hit' in globalThis).toBe(false);
    },
    60_000,
  );

  it('is one of more than five hundred', () => {
    expect(hostileKinds.flatMap(({ files }) => files()).length).toBeGreaterThan(500);
  });

  it('is not even read where it is larger than any program', async () => {
    let reads = 0;
    class CountedBlob extends Blob {
      override async arrayBuffer() {
        reads += 1;
        return super.arrayBuffer();
      }
    }
    const whole = new Uint8Array(largestProgramBytes + 3).fill(32); // a byte order mark is not counted
    await decodeProgramFile(new CountedBlob([whole]));
    expect(reads).toBe(1);
    const larger = await decodeProgramFile(new CountedBlob([whole, ' ']));
    expect(larger).toMatchObject({ ok: false, problem: { message: expect.stringContaining('larger than 1 MiB') } });
    expect(reads).toBe(1);
  });

  it('says so where its bytes can’t be had', async () => {
    class GoneBlob extends Blob {
      override arrayBuffer(): Promise<ArrayBuffer> {
        throw new DOMException('moved', 'NotFoundError');
      }
    }
    expect(await decodeProgramFile(new GoneBlob(['{}']))).toMatchObject({
      ok: false,
      problem: { message: expect.stringContaining('can’t be read') },
    });
  });

  it('names the line of the first character that can’t be read', async () => {
    const bytes = Uint8Array.from([...utf8('{\n "a": 1,\n "b": "'), 0xe9, ...utf8('"\n}\n')]);
    expect(await decodeProgramFile(blobOf(bytes))).toMatchObject({ ok: false, problem: { line: 3 } });
  });
});
