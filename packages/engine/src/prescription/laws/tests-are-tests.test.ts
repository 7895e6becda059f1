import { prescribe } from '@larkhold/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLifePlan, inputOf, live } from '../../../../../tests/fixtures/prescription/any-life.ts';
import { builtInPrograms } from '../../program/built-in-programs.ts';
import { dayOfNumber } from '../../units/calendar-day.ts';

// Law: a test is done as it is written or not at all: never eased, never cut, not on the way back from pain, not just before a competition.

const tests = builtInPrograms.filter(({ kind }) => kind === 'test');

describe('a test is a test', { timeout: 300_000 }, () => {
  it('is the file, or a rest without a block', () => {
    fc.assert(
      fc.property(
        anyLifePlan(),
        fc.constantFrom(...tests),
        fc.integer({ min: 0, max: 4 }),
        (plan, program, daysLeft) => {
          const life = live(plan);
          const last = life.days.at(-1)!;
          const input = { ...inputOf(life, last), program };
          const given = prescribe(input);
          const [file] = program.blocks;
          for (const { holdMs, reps, sets, addedWeightLbf } of given.blocks) {
            expect([holdMs, reps, sets, addedWeightLbf]).toEqual([
              file!.hold * 1000,
              file!.reps,
              file!.sets,
              file!.addedWeight,
            ]);
          }
          expect(given.blocks.length === 0).toBe(given.rest !== undefined);
          if (input.minutes !== undefined) expect(given.durationMs).toBeLessThanOrEqual(input.minutes * 60_000);
          if ([...last.records, ...last.entries].some((one) => one.pain && one.date === dayOfNumber(last.day)))
            expect(given.rest).toBeDefined();
          const near = prescribe({ ...input, competitionDay: dayOfNumber(last.day + daysLeft) });
          if (daysLeft <= 2) expect(near.rest).toBeDefined();
        },
      ),
      { seed: 901, numRuns: 2000 },
    );
  });

  it('too few minutes are a rest, and say how many it takes', () => {
    const [program] = tests;
    const given = prescribe({ program: program!, records: [], today: '2026-11-25', minutes: 1 });
    expect(given.blocks).toEqual([]);
    expect(given.rest?.rule).toBe('testMinutes');
    expect(given.rest?.change).toContain('is never cut');
  });
});

describe('a test is a test, by example', () => {
  const program = tests[0]!;
  const today = dayOfNumber(20_000);
  const ago = (days: number, more: object) => ({ date: dayOfNumber(20_000 - days), ...more });
  const ruleOf = (input: object) => prescribe({ program, records: [], today, ...input }).rest?.rule;

  it('no test is given on the way back from pain, neither while drills are mimed nor when the band is next', () => {
    expect(ruleOf({ days: [ago(1, { pain: true })] })).toBe('painMimed');
    const answered = [ago(6, { pain: true }), ago(5, { pain: false }), ago(3, { pain: false })];
    expect(ruleOf({ days: answered })).toBe('testPain');
  });

  it('what makes any day a rest day makes it one for a test: six days in a row, and pain today', () => {
    const six = [1, 2, 3, 4, 5, 6].map((days) => ago(days, { arrows: [{ kind: 'practice', count: 30 }] }));
    expect(ruleOf({ days: six })).toBe('daysInRow');
    expect(ruleOf({ days: six.slice(1) })).toBeUndefined();
    expect(ruleOf({ days: [ago(0, { pain: true })] })).toBe('pain');
  });

  it('no test is given under 16', () => {
    expect([11, 15, 16].map((ageYears) => ruleOf({ archer: { ageYears } }))).toEqual(['testAge', 'testAge', undefined]);
  });

  it('no test is given in the two days before a competition; three days before, one is', () => {
    const rules = [0, 1, 2, 3].map((days) => ruleOf({ competitionDay: dayOfNumber(20_000 + days) }));
    expect(rules).toEqual(['competition', 'competition', 'testCompetition', undefined]);
  });
});
