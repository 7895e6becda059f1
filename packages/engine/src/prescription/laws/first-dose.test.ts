import { prescribe } from '@larkhold/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLifePlan, askedBy, drillOf } from '../../../../../tests/fixtures/prescription/any-life.ts';
import { builtInPrograms } from '../../program/built-in-programs.ts';
import { dayOfNumber } from '../../units/calendar-day.ts';
import type { LadderFacts } from '../reason.ts';
import { trialProgram, trialRecord } from '../trial-history.ts';

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

  it('a first drill that few minutes, a heavy day or the years cut begins where a whole one does, not at the top', () => {
    const today = dayOfNumber(20_000);
    for (const program of builtInPrograms.filter(({ kind }) => kind !== 'test')) {
      const levelAfter = (more: object) => {
        const archer = { hasClicker: true };
        const given = prescribe({ program, records: [], today, archer, ...more });
        const records = [drillOf(program, given, { manner: 'clean', saysWhy: false }, 0)];
        const next = prescribe({ program, records, today: dayOfNumber(20_002), archer });
        const { facts } = next.reasons.find((reason) => 'level' in reason.facts)!;
        return [program.title, (facts as LadderFacts).level, next.reasons.some(({ rule }) => rule === 'top')];
      };
      const whole = levelAfter({});
      expect(whole[1]).toBe(0);
      for (const more of [{ minutes: 3 }, { minutes: 6 }, { readiness: 'heavy' }, { archer: { ageYears: 13 } }])
        expect(levelAfter(more)).toEqual(whole);
    }
  });

  it('18, 38 and 90 s begin at 7.5, 16 and more than 30 s', () => {
    const holdOf = (longestHoldSeconds: number) =>
      askedBy(prescribe({ program: holding, records: [], today: '2026-11-25', archer: { longestHoldSeconds } }))
        .holdMs / 1000;
    expect([18, 38].map(holdOf)).toEqual([7.5, 16]);
    expect(holdOf(90)).toBeGreaterThan(30);
  });
});

describe('the first dose, in numbers', () => {
  const today = dayOfNumber(20_000);
  /** The hold of a program never drilled, seconds, after two drills of another one, by the hold that they held and the days since. */
  const firstAfter = (heldSeconds: number, ago: number, change: object = {}) => {
    const records = [ago + 2, ago].map((back) =>
      trialRecord(dayOfNumber(20_000 - back), heldSeconds, {}, { tool: 'bow' }),
    );
    const program = trialProgram(change, { title: 'Another' });
    return askedBy(prescribe({ program, records, today }));
  };

  it('a new program begins at what was held in another one, and the weight of its path is not begun with', () => {
    expect(firstAfter(40, 2).holdMs).toBe(40_000);
    expect(firstAfter(40, 2).weightLbf).toBe(0);
    const weighted = {
      rungs: [
        { raise: 'addedWeight', by: 2, until: 4 },
        { raise: 'hold', by: 5, until: 45 },
      ],
    };
    expect(firstAfter(40, 2, { ladder: weighted }).weightLbf).toBe(0);
  });

  it('where only short holds were asked so far, it begins with half of the foot at the least, and no more than the foot', () => {
    expect(firstAfter(10, 2).holdMs).toBe(15_000);
    expect(firstAfter(20, 2).holdMs).toBe(20_000);
  });

  it('a hold of eight weeks and more ago is no longer known', () => {
    expect(firstAfter(40, 70).holdMs).toBeLessThanOrEqual(30_000);
  });

  it('is in half seconds, though what was held is not: of 17.342 s let down for form it is 17 s', () => {
    const record = trialRecord(dayOfNumber(19_998), 40, {}, { tool: 'bow' });
    const reps = record.reps.map((rep) => ({
      ...rep,
      heldMs: 17_342,
      outcome: 'short' as const,
      why: 'form' as const,
    }));
    const program = trialProgram({}, { title: 'Another' });
    expect(askedBy(prescribe({ program, records: [{ ...record, reps }], today })).holdMs).toBe(17_000);
  });

  it('nor is it, though shorter holds were drilled every week since', () => {
    // Given 40 s once, and sixty days later three drills of 10 s: half of the foot of 30 s is the first dose.
    const records = [70, 10, 7, 4].map((ago) =>
      trialRecord(dayOfNumber(20_000 - ago), ago === 70 ? 40 : 10, {}, { tool: 'bow' }),
    );
    const program = trialProgram({}, { title: 'Another' });
    expect(askedBy(prescribe({ program, records, today })).holdMs).toBe(15_000);
  });

  it('no first dose has weight, though the file begins with it and the first fortnight is long over', () => {
    const records = [60, 30, 2].map((ago) => trialRecord(dayOfNumber(20_000 - ago), 40, {}, { tool: 'bow' }));
    const program = trialProgram({ addedWeight: 4 }, { title: 'Another', author: 'A coach' });
    const { holdMs, weightLbf } = askedBy(prescribe({ program, records, today }));
    expect([holdMs, weightLbf]).toEqual([40_000, 0]);
  });

  it('who held 40 s and failed 15 s since does not begin with 40 s, nor with 30', () => {
    const program = trialProgram({}, { title: 'Another' });
    const all = Object.fromEntries(Array.from({ length: 10 }, (_, at) => [at, 'short' as const]));
    const records = [
      trialRecord(dayOfNumber(19_990), 40, {}, { tool: 'bow' }),
      trialRecord(dayOfNumber(19_998), 15, all, { tool: 'bow' }),
    ];
    expect(askedBy(prescribe({ program, records, today })).holdMs).toBeLessThan(15_000);
  });

  it('a hold that has failed since is not begun with', () => {
    const program = trialProgram({}, { title: 'Another' });
    const failed = { 0: 'short', 1: 'short', 2: 'short', 3: 'short', 4: 'short', 5: 'short' } as const;
    const records = [
      trialRecord(dayOfNumber(19_990), 40, {}, { tool: 'bow' }),
      trialRecord(dayOfNumber(19_998), 40, failed, { tool: 'bow' }),
    ];
    expect(askedBy(prescribe({ program, records, today })).holdMs).toBeLessThan(40_000);
  });
});
