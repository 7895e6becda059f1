import { prescribe } from '@larkhold/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLifePlan, askedBy } from '../../../../../tests/fixtures/prescription/any-life.ts';
import { builtInPrograms } from '../../program/built-in-programs.ts';

// Law: the first dose fits what the archer is known to hold.

const holding = builtInPrograms.find(({ title }) => title === 'Holding')!;

describe('the first dose fits', { timeout: 300_000 }, () => {
  it('asks for no hold longer than the longest, and for no more of somebody who holds less', () => {
    fc.assert(
      fc.property(
        anyLifePlan(),
        fc.integer({ min: 3, max: 200 }),
        fc.integer({ min: 0, max: 60 }),
        ({ programs }, longest, more) => {
          for (const program of programs) {
            if (program.kind === 'test') continue;
            const first = (longestHoldSeconds: number) =>
              askedBy(
                prescribe({
                  program,
                  records: [],
                  today: '2026-11-25',
                  archer: { longestHoldSeconds, hasClicker: true },
                }),
              );
            const [weaker, stronger] = [first(longest), first(longest + more)];
            expect(weaker.holdMs).toBeLessThanOrEqual(longest * 1000);
            expect(weaker.holdMs).toBeLessThanOrEqual(stronger.holdMs);
            expect(weaker.totalMs).toBeGreaterThan(0);
          }
        },
      ),
      { seed: 801, numRuns: 2000 },
    );
  });

  it('18, 38 and 90 s begin at 7.5, 16 and more than 30 s', () => {
    const holdOf = (longestHoldSeconds: number) =>
      askedBy(prescribe({ program: holding, records: [], today: '2026-11-25', archer: { longestHoldSeconds } }))
        .holdMs / 1000;
    expect([18, 38].map(holdOf)).toEqual([7.5, 16]);
    expect(holdOf(90)).toBeGreaterThan(30);
  });
});
