import type { Step } from '@larkhold/engine';
import { describe, expect, it } from 'vitest';
import { drawAmount } from './draw-amount.ts';

const at = (kind: Step['kind'], done: number, to?: 'set-up') => ({
  step: { kind, startMs: 0, durationMs: 1000, block: 0, set: 0, rep: 0, hand: 'usual' as const, ...(to && { to }) },
  stepMs: 1000,
  msLeft: 1000 * (1 - done),
});

describe('drawAmount', () => {
  it('is straight at rest, deepens through the draw, is full at the hold and eases through the let-down', () => {
    for (const kind of ['ready', 'rest', 'setRest'] as const) expect(drawAmount(at(kind, 0.5))).toBe(0);
    const draws = [0, 0.2, 0.4, 0.6, 0.8, 1].map((done) => drawAmount(at('draw', done)));
    expect(draws).toEqual([...draws].sort((a, b) => a - b));
    expect([draws.at(0), draws.at(-1)]).toEqual([0, 1]);
    expect(drawAmount(at('hold', 0.5))).toBe(1);
    expect(drawAmount(at('letDown', 0))).toBe(1);
    expect(drawAmount(at('letDown', 0.5))).toBeCloseTo(0.5, 9);
    expect(drawAmount(at('letDown', 1))).toBe(0);
  });

  it('stays at set-up between the reps of a power drill', () => {
    expect(drawAmount(at('letDown', 1, 'set-up'))).toBeCloseTo(0.14, 9);
    expect(drawAmount(at('rest', 0.5), { fromSetUp: true })).toBe(0.14);
    expect(drawAmount(at('draw', 0), { fromSetUp: true })).toBe(0.14);
  });

  it('takes few places when it may not move', () => {
    const places = new Set(
      Array.from({ length: 100 }, (_, index) => drawAmount(at('draw', index / 100), { isStill: true })),
    );
    expect(places.size).toBe(3);
  });

  it('is straight when nothing runs', () => {
    expect(drawAmount({ stepMs: 0, msLeft: 0 })).toBe(0);
  });
});
