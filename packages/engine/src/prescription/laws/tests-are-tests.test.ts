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
