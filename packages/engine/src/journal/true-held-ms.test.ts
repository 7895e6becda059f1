import { describe, expect, it } from 'vitest';
import { heldOf } from './held-of.ts';
import type { RepRecord } from './rep-record.ts';
import { DISAGREEMENT_MS, disagreementMs, seenHeldMs, trueHeldMs, trueOutcome, wholeHeldMs } from './true-held-ms.ts';

/** A hold of 20 s by the clock, of 20 s prescribed. */
const clock: RepRecord = {
  ...{ block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: 20_000, heldMs: 20_000, outcome: 'held' },
};
const seen = (fromMs: number, toMs: number, more: Partial<RepRecord> = {}): RepRecord => ({
  ...{ ...clock, seen: { fromMs, toMs }, ...more },
});

describe('how long a rep was held', () => {
  it.each([
    ['by the clock where nothing was seen', clock, 20_000, 0],
    ['from anchor to let-down where it was seen', seen(500, 18_000), 17_500, 17_500],
    ['no more than was prescribed', seen(-400, 21_000), 20_000, 20_000],
    ['never less than nothing', seen(5, 0), 0, 0],
    ['by the clock where it was skipped', seen(0, 9000, { outcome: 'skipped', heldMs: 0 }), 0, 0],
    ['by the clock where nobody can say', seen(0, 9000, { outcome: 'unsure', heldMs: 4000 }), 4000, 0],
    ['as seen where it was short', seen(0, 9000, { outcome: 'short', heldMs: 12_000 }), 9000, 9000],
  ])('is %s', (_, rep, held, ofCamera) => {
    expect(trueHeldMs(rep)).toBe(held);
    expect(seenHeldMs(rep)).toBe(ofCamera);
    expect(disagreementMs(rep)).toBe(held - rep.heldMs);
  });
});

describe('how a rep ended', () => {
  it.each([
    ['held where nothing was seen', clock, 'held'],
    ['held where it was seen in full', seen(0, 20_000), 'held'],
    ['held where half a second is missing', seen(0, 19_500), 'held'],
    ['short where it was let down earlier than that', seen(0, 19_499), 'short'],
    ['nobody can say where it began late and lasted to the end', seen(501, 20_000), 'unsure'],
    ['nobody can say where it began late and ended half a second early', seen(100, 19_500), 'unsure'],
    ['short by the clock, whatever was seen', seen(0, 20_000, { outcome: 'short' }), 'short'],
    ['skipped by the clock, whatever was seen', seen(0, 20_000, { outcome: 'skipped' }), 'skipped'],
  ])('is %s', (_, rep, outcome) => {
    expect(trueOutcome(rep)).toBe(outcome);
  });

  it('differs from the clock by half a second at least', () => {
    expect(DISAGREEMENT_MS).toBe(500);
  });
});

describe('how long it stayed whole', () => {
  it.each([
    ['unknown without a camera', clock, undefined],
    ['unknown where the form could not be judged', seen(0, 20_000), undefined],
    ['as it was seen', seen(0, 20_000, { seen: { fromMs: 0, toMs: 20_000, wholeMs: 12_000 } }), 12_000],
    ['no more than was held', seen(0, 9000, { seen: { fromMs: 0, toMs: 9000, wholeMs: 12_000 } }), 9000],
  ])('is %s', (_, rep, whole) => {
    expect(wholeHeldMs(rep)).toBe(whole);
  });
});

describe('what some reps add up to', () => {
  it('is nothing for none', () => {
    expect(heldOf([])).toEqual({ heldMs: 0, seenMs: 0, fullCount: 0, longestMs: 0 });
  });

  it('is the time of all, and full and longest of those alone that were held in full', () => {
    const reps: RepRecord[] = [
      { ...clock, prescribedMs: 10_000, heldMs: 10_000 },
      seen(200, 20_000), // 19.8 s seen, held
      { ...clock, prescribedMs: 30_000, heldMs: 25_000, outcome: 'short' },
      { ...clock, prescribedMs: 8000, heldMs: 8000 },
      seen(0, 5000), // 5 s seen, short
    ];
    expect(heldOf(reps)).toEqual({ heldMs: 67_800, seenMs: 24_800, fullCount: 3, longestMs: 19_800 });
  });
});
