import fc from 'fast-check';
import { expect, it } from 'vitest';
import { createReplayRing, type ReplayChunk } from './replay-ring.ts';

const chunk = (atMs: number, isKey: boolean, bytes = 100): ReplayChunk<number> => ({ atMs, isKey, bytes, chunk: atMs });

it('begins at a key picture, keeps half a minute and whole groups, and knows its size', () => {
  const gaps = fc.array(fc.record({ gapMs: fc.integer({ min: 20, max: 400 }), isKey: fc.boolean() }), {
    maxLength: 400,
  });
  fc.assert(
    fc.property(gaps, fc.integer({ min: 0, max: 60_000 }), (script, fromMs) => {
      const ring = createReplayRing<number>();
      let atMs = 0;
      let pushed = 0;
      for (const { gapMs, isKey } of script) {
        atMs += gapMs;
        ring.push(chunk(atMs, isKey));
        pushed++;
      }
      const all = ring.between(Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY);
      expect(all.length === 0 || all[0]?.isKey).toBe(true);
      expect(ring.bytes()).toBe(all.length * 100);
      expect(all.length).toBeLessThanOrEqual(pushed);
      // What is older than half a minute belongs to the group that the half minute begins in.
      const secondKey = all.find(({ isKey }, index) => index > 0 && isKey);
      if (secondKey) expect(secondKey.atMs).toBeGreaterThan(atMs - 30_000);
      const part = ring.between(fromMs, fromMs + 5_000);
      expect(part.length === 0 || part[0]?.isKey).toBe(true);
      expect(part.every((one) => one.atMs <= fromMs + 5_000)).toBe(true);
    }),
    { seed: 14, numRuns: 200 },
  );
});

it('never grows without end, and forgets all when it is told to', () => {
  const ring = createReplayRing<number>();
  for (let atMs = 0; atMs < 20_000; atMs += 100) ring.push(chunk(atMs, atMs % 1_000 === 0, 200_000));
  expect(ring.bytes()).toBeLessThan(15_000_000);
  ring.clear();
  expect(ring.bytes()).toBe(0);
  expect(ring.between(0, 20_000)).toEqual([]);
});
