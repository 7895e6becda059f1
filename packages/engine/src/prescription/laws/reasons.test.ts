import { prescribe } from '@larkhold/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLifePlan, live } from '../../../../../tests/fixtures/prescription/any-life.ts';
import { builtInPrograms } from '../../program/built-in-programs.ts';
import { explain } from '../explain.ts';
import { reasonOf } from '../reason-of.ts';
import { trialProgram, trialRecord } from '../trial-history.ts';

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

  it('tells of the minutes only where they leave less than days away do', () => {
    const program = trialProgram();
    const other = trialRecord('2026-10-20', 5, {}, { id: 'other', program: 'Another' });
    const records = ['2026-09-01', '2026-09-03', '2026-09-05', '2026-09-07'].map((date) => trialRecord(date, 30));
    const saidIn = (minutes: number) => {
      const given = prescribe({ program, records: [...records, other], today: '2026-10-22', minutes });
      const said = given.reasons.find(({ rule }) => rule === 'shorter')?.facts as Record<string, number> | undefined;
      const [block] = given.blocks;
      return { today: block!.sets * block!.reps, said: said && said.sets! * said.reps! };
    };
    // 43 days away leave less than half of 2 x 5; in fourteen minutes more than that has room, in three less.
    expect(saidIn(14).said).toBeUndefined();
    const { today, said } = saidIn(3);
    expect(said).toBe(today);
    expect(today).toBeLessThan(saidIn(14).today);
  });

  it('says of every number below what is worked with what made it less', () => {
    fc.assert(
      fc.property(anyLifePlan(), (plan) => {
        const life = live(plan);
        for (const lived of life.days) {
          const { given } = lived;
          if (given.kind === 'test') continue;
          for (const { block, holdMs, reps, sets, addedWeightLbf } of given.blocks) {
            const level = given.reasons.find((one) => one.block === block && 'workHold' in one.facts);
            expect(level).toBeDefined();
            const { workHold, workReps, workSets, workAddedWeight } = level!.facts as Record<string, number>;
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
                  one !== level &&
                  (one.block === undefined || one.block === block) &&
                  one.acts?.includes(lever as 'hold'),
              );
              expect([lever, today, work, said]).toEqual([lever, today, work, true]);
            }
            // A sentence that is the last to say a count says today's: what the minutes or the years leave is not told where less is left anyway.
            const count = sets * reps;
            const last = given.reasons.findLast(
              (one) => one.block === block && 'reps' in one.facts && one.rule !== 'top',
            );
            if (last && ['shorter', 'pace', 'ageDose'].includes(last.rule)) {
              const facts = last.facts as Record<string, number>;
              expect([last.rule, facts.sets! * facts.reps!]).toEqual([last.rule, count]);
            }
          }
        }
      }),
      { seed: 1102, numRuns: 2000 },
    );
  });

  it('a first dose says of each number that it decided why', () => {
    const program = builtInPrograms.find(({ title }) => title === 'Holding')!;
    const given = prescribe({ program, records: [], today: '2026-11-25', archer: { longestHoldSeconds: 38 } });
    for (const lever of ['hold', 'reps', 'sets', 'addedWeight'] as const)
      expect(explain(given, 0, lever)).toContain('hold 16 s to begin with, because you said that you can hold 38 s.');
    expect(explain(given, 0, 'rest')).not.toContain('you said');
  });

  it('a heavy day reads as one', () => {
    const given = prescribe({ program: builtInPrograms[0]!, records: [], today: '2026-11-25', readiness: 'heavy' });
    expect(given.reasons.map(({ change }) => change)).toContain(
      'Short holds: 3 reps instead of 5, because you said today is heavy.',
    );
  });
});
