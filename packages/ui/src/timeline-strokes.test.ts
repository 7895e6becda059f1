import type { Step } from '@larkhold/engine';
import { describe, expect, it } from 'vitest';
import { STROKES, timelineStrokes } from './timeline-strokes.ts';

const hold = (startMs: number, durationMs: number): Step => ({
  ...{ kind: 'hold', startMs, durationMs, block: 0, set: 0, rep: 0, hand: 'usual' },
});
const xsOf = (path: string) => [...path.matchAll(/M([\d.]+) /g)].map(([, x]) => Number(x));

describe('timelineStrokes', () => {
  it('puts each hold in the middle of its time and draws nothing else', () => {
    const rest: Step = { ...hold(10_000, 80_000), kind: 'rest' };
    const path = timelineStrokes([hold(0, 10_000), rest, hold(90_000, 10_000)], {
      fromMs: 0,
      spanMs: 100_000,
      tallestMs: 10_000,
    });
    const [first = 0, second = 0] = xsOf(path);
    expect(xsOf(path)).toHaveLength(2);
    expect(second - first).toBeCloseTo(0.9 * STROKES.width, 1);
  });

  it('makes strokes thinner where many have to fit, so that a gap is left between all of them', () => {
    const steps = Array.from({ length: 300 }, (_, at) => hold(10_000 + at * 4000, 2000));
    const path = timelineStrokes(steps, { fromMs: 0, spanMs: 1_210_000, tallestMs: 2000 });
    const ends = [...path.matchAll(/M([\d.]+) [^Z]* ([\d.]+) [\d.]+Z/g)].map(([, left, right]) => [
      Number(left),
      Number(right),
    ]);
    expect(ends).toHaveLength(300);
    for (const [at, [left = 0]] of ends.entries()) expect(left).toBeGreaterThan(ends[at - 1]?.[1] ?? -1);
  });
});
