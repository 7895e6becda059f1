import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyProgram } from '../../../../tests/fixtures/prescription/any-ladder.ts';
import { fitToLimit } from './fit-minutes.ts';
import { prescribe } from './prescribe.ts';
import type { PrescribedBlock } from './prescription.ts';
import { timelineDurationMs } from './timeline-duration.ts';

// The oracle tries every way to do every block.

function createBlock(index: number, change: Partial<PrescribedBlock>): PrescribedBlock {
  return {
    ...{ block: index, title: `Block ${index}`, drill: 'holding', sets: 1, reps: 1 },
    ...{ drawMs: 3000, holdMs: 30_000, letDownMs: 3000, restMs: 60_000, setRestMs: 120_000 },
    ...{ letDownTo: 'rest', hand: 'usual', addedWeightLbf: 0, ...change },
  };
}

function waysOf(blocks: readonly PrescribedBlock[]): PrescribedBlock[][] {
  const [first, ...rest] = blocks;
  if (!first) return [[]];
  const later = waysOf(rest);
  const own: PrescribedBlock[][] = [[]];
  for (let sets = 1; sets <= first.sets; sets++) {
    for (let reps = 1; reps <= first.reps; reps++) own.push([{ ...first, sets, reps }]);
  }
  return own.flatMap((choice) => later.map((way) => [...choice, ...way]));
}

const heldOf = (way: readonly PrescribedBlock[]) =>
  way.reduce((sum, { sets, reps, holdMs }) => sum + sets * reps * holdMs, 0);
const setsOf = (way: readonly PrescribedBlock[]) => way.reduce((sum, { sets }) => sum + sets, 0);

const anyBlocks = fc
  .array(
    fc.record({
      sets: fc.integer({ min: 1, max: 3 }),
      reps: fc.integer({ min: 1, max: 4 }),
      holdMs: fc.integer({ min: 1, max: 80 }).map((half) => half * 500),
      restMs: fc.integer({ min: 0, max: 60 }).map((seconds) => seconds * 1000),
      setRestMs: fc.integer({ min: 0, max: 180 }).map((seconds) => seconds * 1000),
    }),
    { minLength: 1, maxLength: 3 },
  )
  .map((changes) => changes.map((change, index) => createBlock(index, change)));

describe('fitToLimit', () => {
  it('finds what trying every way finds: most time held, then most sets', () => {
    fc.assert(
      fc.property(anyBlocks, fc.integer({ min: 1, max: 25 }), (blocks, minutes) => {
        const limitMs = minutes * 60_000;
        const fitting = waysOf(blocks).filter((way) => way.length > 0 && timelineDurationMs(way) <= limitMs);
        fc.pre(fitting.length > 0);
        const held = Math.max(...fitting.map(heldOf));
        const sets = Math.max(...fitting.filter((way) => heldOf(way) === held).map(setsOf));
        const fitted = fitToLimit(blocks, limitMs);
        expect(timelineDurationMs(fitted)).toBeLessThanOrEqual(limitMs);
        expect([heldOf(fitted), setsOf(fitted)]).toEqual([held, sets]);
      }),
      { seed: 71, numRuns: 300 },
    );
  });

  it('does so for one block of any size a file allows: up to 20 sets of 60 reps', () => {
    const size = fc.record({
      ...{ sets: fc.integer({ min: 1, max: 20 }), reps: fc.integer({ min: 1, max: 60 }) },
      holdMs: fc.integer({ min: 5, max: 1800 }).map((tenths) => tenths * 100),
      restMs: fc.integer({ min: 0, max: 600 }).map((seconds) => seconds * 1000),
      setRestMs: fc.integer({ min: 0, max: 900 }).map((seconds) => seconds * 1000),
    });
    fc.assert(
      fc.property(size, fc.integer({ min: 3, max: 240 }), (change, minutes) => {
        const block = createBlock(0, change);
        const fitting = waysOf([block]).filter((way) => timelineDurationMs(way) <= minutes * 60_000 && way.length > 0);
        fc.pre(fitting.length > 0);
        const held = Math.max(...fitting.map(heldOf));
        const sets = Math.max(...fitting.filter((way) => heldOf(way) === held).map(setsOf));
        const fitted = fitToLimit([block], minutes * 60_000);
        expect([heldOf(fitted), setsOf(fitted)]).toEqual([held, sets]);
      }),
      { seed: 72, numRuns: 60 },
    );
  });

  it('holds as long as a table by the second says, for programs of the sizes that coaches write', () => {
    const seconds = (least: number, most: number) => fc.integer({ min: least, max: most }).map((one) => one * 1000);
    const sizes = fc.array(
      fc.record({
        ...{ sets: fc.integer({ min: 1, max: 5 }), reps: fc.integer({ min: 1, max: 12 }) },
        ...{ drawMs: seconds(1, 4), holdMs: seconds(3, 60), letDownMs: seconds(1, 4) },
        ...{ restMs: seconds(0, 120), setRestMs: seconds(0, 300) },
      }),
      { minLength: 1, maxLength: 6 },
    );
    fc.assert(
      fc.property(sizes, fc.integer({ min: 2, max: 60 }), (changes, minutes) => {
        const blocks = changes.map((change, index) => createBlock(index, change));
        const most = mostHeldBySecond(blocks, minutes * 60 - 10);
        fc.pre(most > 0);
        const fitted = fitToLimit(blocks, minutes * 60_000);
        expect(heldOf(fitted) / 1000).toBe(most);
        expect(timelineDurationMs(fitted)).toBeLessThanOrEqual(minutes * 60_000);
      }),
      { seed: 73, numRuns: 40 },
    );
  });

  it('cuts one hold where not one rep fits', () => {
    const [only, ...more] = fitToLimit([createBlock(0, { holdMs: 90_000 })], 60_000);
    expect(only).toMatchObject({ sets: 1, reps: 1, holdMs: 44_000 }); // 60 - 10 ready - 3 draw - 3 let-down
    expect(more).toEqual([]);
  });

  it.each([5, 12, 45, 90])(
    'is exact for twenty blocks of 5 x 12 in %i minutes, as a table by the second is',
    (minutes) => {
      const blocks = Array.from({ length: 20 }, (_, index) => {
        const change = {
          holdMs: 1000 * (4 + ((index * 7) % 13)),
          restMs: 1000 * (index % 7),
          setRestMs: 1000 * (20 + index),
        };
        return createBlock(index, { sets: 5, reps: 12, ...change });
      });
      expect(heldOf(fitToLimit(blocks, minutes * 60_000)) / 1000).toBe(mostHeldBySecond(blocks, minutes * 60 - 10));
    },
  );
});

describe('a prescription for few minutes', () => {
  const manyMinutes = fc.oneof(fc.constant(2), fc.integer({ min: 1, max: 60 }));

  it('gives something, keeps every rest, draw and let-down, and says what was given up and what share is left', () => {
    fc.assert(
      fc.property(anyProgram, manyMinutes, (program, minutes) => {
        const full = prescribe({ program, records: [], today: '2026-11-25', minutes: 6000 });
        const fitted = prescribe({ program, records: [], today: '2026-11-25', minutes });
        const reason = fitted.reasons.find(({ rule }) => rule === 'minutes');
        const given = fitted.reasons.filter(({ rule }) => rule === 'shorter').map(({ change }) => change);
        expect(heldOf(fitted.blocks)).toBeGreaterThanOrEqual(500);
        for (const { block, sets, reps, holdMs, ...kept } of fitted.blocks) {
          const before = full.blocks.find((other) => other.block === block)!;
          expect(before).toMatchObject(kept);
          expect(sets <= before.sets && reps <= before.reps && holdMs <= before.holdMs).toBe(true);
          // A hold is cut only where it is the only one.
          if (holdMs < before.holdMs) expect([fitted.blocks.length, sets, reps]).toEqual([1, 1, 1]);
        }
        if (full.durationMs <= minutes * 60_000) {
          expect(reason).toBeUndefined();
          expect(fitted.blocks).toEqual(full.blocks);
          return;
        }
        const share = Math.round((100 * heldOf(fitted.blocks)) / heldOf(full.blocks));
        expect(given.join(' ')).toMatch(/left out|instead of|cut to one hold/);
        expect(reason?.facts).toMatchObject({ minutes });
        const said = Number(/room for (\d+) %/.exec(reason?.change ?? '')?.[1]);
        expect(Math.abs(said - share)).toBeLessThanOrEqual(1);
        if (fitted.durationMs > minutes * 60_000)
          expect(reason?.change).toContain('Even one rep takes longer than that.');
        if (minutes >= 2) expect(fitted.durationMs).toBeLessThanOrEqual(minutes * 60_000);
      }),
      { seed: 74, numRuns: 200 },
    );
  });
});

/** most[t]: the most seconds held in t seconds by the blocks from one on, -1 where none was begun. */
function mostHeldBySecond(blocks: readonly PrescribedBlock[], seconds: number): number {
  let begun = new Array<number>(seconds + 1).fill(-1);
  for (const { sets, reps, drawMs, holdMs, letDownMs, restMs, setRestMs } of [...blocks].reverse()) {
    const next = [...begun];
    for (let set = 1; set <= sets; set++) {
      for (let rep = 1; rep <= reps; rep++) {
        const cost = (set * (rep * (drawMs + holdMs + letDownMs) + (rep - 1) * restMs) + (set - 1) * setRestMs) / 1000;
        const held = (set * rep * holdMs) / 1000;
        for (let at = cost; at <= seconds; at++) {
          const before = begun[at - cost - setRestMs / 1000] ?? -1;
          next[at] = Math.max(next[at]!, held, before < 0 ? -1 : before + held);
        }
      }
    }
    begun = next;
  }
  return begun[seconds]!;
}
