import type { Cue } from '@larkhold/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { armCues, planCues } from './plan-cues.ts';

/** A fixed drill: ready 10 s, draw 3 s, hold 12 s, let-down. Times worked out by hand. */
const golden: Cue[] = [
  { atMs: 0, kind: 'ready' },
  { atMs: 10000, kind: 'draw' },
  { atMs: 13000, kind: 'hold' },
  { atMs: 19000, kind: 'half' },
  { atMs: 22000, kind: 'count' },
  { atMs: 23000, kind: 'count' },
  { atMs: 24000, kind: 'count' },
  { atMs: 25000, kind: 'letDown' },
  { atMs: 27000, kind: 'done' },
];
const dues = (armed: { dueMs: number }[]) => armed.map(({ dueMs }) => dueMs);

describe('armCues', () => {
  it('puts a fixed drill on the page clock', () => {
    const armed = armCues(golden, 500, 500);
    expect(dues(armed)).toEqual([500, 10500, 13500, 19500, 22500, 23500, 24500, 25500, 27500]);
  });

  it('drops what is past when it is armed in the middle', () => {
    expect(armCues(golden, 0, 23500).map(({ cue }) => cue.kind)).toEqual(['count', 'letDown', 'done']);
  });
});

describe('planCues', () => {
  it('starts what comes within the lookahead and leaves the rest', () => {
    const plan = planCues(armCues(golden, 0, 0), 12000, 8000);
    expect(dues(plan.stale)).toEqual([0, 10000]);
    expect(dues(plan.start)).toEqual([13000, 19000]);
    expect(dues(plan.later)).toEqual([22000, 23000, 24000, 25000, 27000]);
  });

  it('never piles up: after any gap what starts is not late, and no cue is lost or doubled', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 600_000 }), { maxLength: 80 }),
        fc.nat(600_000),
        (times, nowMs) => {
          const waiting = armCues(
            times.map((atMs) => ({ atMs, kind: 'count' as const })),
            0,
            0,
          );
          const plan = planCues(waiting, nowMs);
          for (const dueMs of dues(plan.start)) expect(dueMs).toBeGreaterThanOrEqual(nowMs - 150);
          const all = [...plan.stale, ...plan.start, ...plan.later];
          expect(dues(all)).toEqual(dues(waiting));
        },
      ),
    );
  });
});
