import { writeFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { readers } from './readers.ts';

// How many texts each reader gets; more with FUZZ_RUNS=100000, other ones with FUZZ_SEED; FUZZ_SLOWEST=FOLDER keeps the slowest text.
const numRuns = Number(process.env.FUZZ_RUNS ?? 1000);
const seed = Number(process.env.FUZZ_SEED ?? 20_261_126);

/** Whether a value and all in it are plain, as JSON is. */
function isPlain(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return true;
  const prototype: unknown = Object.getPrototypeOf(value);
  if (prototype !== Object.prototype && prototype !== Array.prototype && prototype !== null) return false;
  return Object.values(value).every(isPlain);
}

it.each(readers)(
  '$name: any text is read or refused in words, never thrown at, and what is accepted is written and read the same',
  ({ name, hostile, read }) => {
    const counts = { accepted: 0, refused: 0 };
    let [slowestMs, slowest] = [0, ''];
    fc.assert(
      fc.property(hostile, (text) => {
        // Of the processor: other work on the machine takes nothing from a text.
        const before = process.cpuUsage();
        const answer = read(text);
        const ms = process.cpuUsage(before).user / 1000;
        if (ms > slowestMs) [slowestMs, slowest] = [ms, text];
        if (answer.ok) {
          counts.accepted++;
          expect(isPlain(answer.value)).toBe(true);
          if (answer.written !== undefined) expect(answer.again?.(answer.written)).toBe(answer.written);
        } else {
          counts.refused++;
          expect(answer.messages.length).toBeGreaterThan(0);
          for (const message of answer.messages) expect(message.trim()).not.toBe('');
          for (const pointer of answer.pointers ?? []) expect(pointer).toMatch(/^(\/|$)/);
        }
      }),
      { seed, numRuns },
    );
    expect(Object.keys(Object.prototype)).toEqual([]);
    expect(Object.getOwnPropertyNames(Object.prototype)).toHaveLength(ownNamesBefore);
    expect(counts.accepted + counts.refused).toBeGreaterThanOrEqual(numRuns);
    expect(counts.accepted).toBeGreaterThan(0); // else nothing would have been written and read again
    console.info(
      `${name}: seed ${seed}, ${JSON.stringify(counts)}, slowest ${slowestMs.toFixed(1)} ms, of ${slowest.length} signs`,
    );
    if (process.env.FUZZ_SLOWEST) writeFileSync(`${process.env.FUZZ_SLOWEST}/${name}.txt`, slowest);
  },
  3_600_000,
);

const ownNamesBefore = Object.getOwnPropertyNames(Object.prototype).length;
