import { prescribe } from '@larkhold/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLifePlan, live } from '../../../../../tests/fixtures/prescription/any-life.ts';
import { builtInPrograms } from '../../program/built-in-programs.ts';
import { reasonOf } from '../reason-words.ts';

// Law: every number has its reason, every reason is data, and its sentence is made from its facts alone; every ease says so.

describe('every number has its reason', { timeout: 300_000 }, () => {
  it('as data from which the sentence can be made again', () => {
    fc.assert(
      fc.property(anyLifePlan(), (plan) => {
        for (const { given } of live(plan).days) {
          for (const reason of [...given.reasons, ...(given.rest ? [given.rest] : [])]) {
            const facts = JSON.parse(JSON.stringify(reason.facts));
            for (const fact of Object.values(facts)) expect(['number', 'string']).toContain(typeof fact);
            expect(reasonOf(reason.rule, facts as never).change).toBe(reason.change);
            expect(reason.change).not.toMatch(/undefined|NaN|null/);
          }
        }
      }),
      { seed: 1101, numRuns: 2000 },
    );
  });

  it('says of every number below what is worked with what made it less', () => {
    fc.assert(
      fc.property(anyLifePlan(), (plan) => {
        const life = live(plan);
        for (const lived of life.days) {
          const { given } = lived;
          if (given.kind === 'test') continue;
          for (const { block, holdMs, reps, sets, addedWeightLbf } of given.blocks) {
            const stand = given.reasons.find((one) => one.block === block && 'workHold' in one.facts);
            expect(stand).toBeDefined();
            const { workHold, workReps, workSets, workAddedWeight } = stand!.facts as Record<string, number>;
            const levers = {
              hold: [holdMs / 1000, workHold],
              reps: [reps, workReps],
              sets: [sets, workSets],
              addedWeight: [addedWeightLbf, workAddedWeight],
            } as const;
            for (const [lever, [today, work]] of Object.entries(levers)) {
              if (Math.abs(today! - work!) < 1e-3) continue;
              const said = given.reasons.some(
                (one) =>
                  one !== stand &&
                  (one.block === undefined || one.block === block) &&
                  one.acts?.includes(lever as 'hold'),
              );
              expect([lever, today, work, said]).toEqual([lever, today, work, true]);
            }
          }
        }
      }),
      { seed: 1102, numRuns: 2000 },
    );
  });

  it('a heavy day reads as one', () => {
    const given = prescribe({ program: builtInPrograms[0]!, records: [], today: '2026-11-25', readiness: 'heavy' });
    expect(given.reasons.map(({ change }) => change)).toContain(
      'Short holds: 3 reps instead of 5, because you said today is heavy.',
    );
  });
});
