import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseProgram } from './parse-program.ts';
import { readyLadders } from './ready-ladders.ts';

const fileOf = (block: object) =>
  JSON.stringify({ format: 'larkhold/program', version: 2, title: 'T', blocks: [block] });
const blockOf = (hold: number, reps: number) => ({
  ...{ title: 'Holds', drill: 'holding', sets: 1, reps, draw: 3, hold, letDown: 3, rest: { timesHold: 2 } },
});

describe('readyLadders', () => {
  it('raises 30 s by the published 5 s, and never past 45 s', () => {
    // acearchers.com, "Archery Exercises": 30 s, 5 s more each time. K. Lee: over 45 s weight is added.
    expect(readyLadders({ hold: 30, reps: 10 })[0]).toMatchObject({
      kind: 'longer',
      ladder: { rungs: [{ raise: 'hold', by: 5, until: 45 }] },
    });
    expect(readyLadders({ hold: 45, reps: 10 }).map(({ kind }) => kind)).toEqual(['more']);
    expect(readyLadders({ hold: 45, reps: 60 })).toEqual([]);
  });

  it('gives the gentle one the smallest steps, after more sessions, at less effort', () => {
    const [longer, , gentle] = readyLadders({ hold: 15, reps: 5 });
    expect(gentle?.ladder.rungs[0]?.by).toBeLessThan(longer?.ladder.rungs[0]?.by ?? 0);
    expect(gentle?.ladder.climbAfter).toEqual({ cleanSessions: 4, effortAtMost: 5 });
  });

  it('is a ladder that a program file may have, whatever the block', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 600 }), fc.integer({ min: 1, max: 60 }), (tenths, reps) => {
        const hold = tenths / 10;
        const block = blockOf(hold, reps);
        if (!parseProgram(fileOf(block)).ok) return;
        for (const { ladder } of readyLadders({ hold, reps })) {
          const parsed = parseProgram(fileOf({ ...block, ladder }));
          // The longest programs have no room left: four hours are the most.
          const problems = parsed.ok
            ? []
            : parsed.problems.filter(({ message }) => !/four hours|4 hours/i.test(message));
          expect(problems).toEqual([]);
        }
      }),
      { numRuns: 200 },
    );
  });
});
