import { prescribe } from '@larkhold/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLifePlan, askedBy, live } from '../../../../../tests/fixtures/prescription/any-life.ts';
import { builtInPrograms } from '../../program/built-in-programs.ts';
import { dayOfNumber } from '../../units/calendar-day.ts';
import { trialProgram } from '../trial-history.ts';

// Law: under 12 no more than the club starter (5 holds of 5 s: bannockburnbowmen.org, coaching corner) on a band; from 12 to 15 half of an adult's
// first dose, never on two days running (2014 consensus, Lloyd et al., Br J Sports Med); what a bow cannot do is not offered for it.

describe('age and bow', { timeout: 300_000 }, () => {
  it('under 12 the club starter on a band; from 12 to 15 half of the foot with a light bow at most, never two days running', () => {
    fc.assert(
      fc.property(anyLifePlan(), fc.integer({ min: 8, max: 15 }), (plan, ageYears) => {
        const life = live({ ...plan, archer: { ...plan.archer, ageYears } });
        for (const { given, program, records, day } of life.days) {
          if (records.some(({ date, reps }) => date === dayOfNumber(day - 1) && reps.length > 0))
            expect(given.rest).toBeDefined();
          const { totalMs, holdMs, weightLbf } = askedBy(given);
          expect(weightLbf).toBe(0);
          if (ageYears < 12) {
            expect(totalMs).toBeLessThanOrEqual(25_000);
            expect(holdMs).toBeLessThanOrEqual(5000);
            expect(given.tool).toBe('band');
          } else {
            const footMs = program.blocks.reduce((sum, { sets, reps, hold }) => sum + sets * reps * hold * 1000, 0);
            expect(totalMs).toBeLessThanOrEqual(footMs / 2 + 1e-6);
            expect(given.tool).not.toBe('bow');
          }
        }
      }),
      { seed: 1001, numRuns: 2000 },
    );
  });

  it('no flexibility without a clicker, whatever the program', () => {
    fc.assert(
      fc.property(anyLifePlan(), (plan) => {
        for (const { given } of live({ ...plan, archer: { ...plan.archer, hasClicker: false } }).days) {
          if (given.kind === 'test') continue;
          expect(given.blocks.every(({ drill }) => drill !== 'flexibility')).toBe(true);
        }
      }),
      { seed: 1002, numRuns: 2000 },
    );
  });

  it('a nine-year-old with the laddered holding program is given five holds of 5 s with a band', () => {
    const program = builtInPrograms.find(({ title }) => title === 'Laddered holding')!;
    const given = prescribe({ program, records: [], today: '2026-11-25', archer: { ageYears: 9 } });
    expect(given.tool).toBe('band');
    expect(askedBy(given)).toEqual({ holdMs: 5000, totalMs: 25_000, weightLbf: 0 });
    expect(given.reasons.map(({ rule }) => rule)).toContain('ageDose');
  });

  it('halves a file of one long hold too: 156.8 s at twelve are 78.4 s, and five under twelve', () => {
    const one = trialProgram({ sets: 1, reps: 1, hold: 156.8, ladder: undefined });
    const at = (ageYears: number) =>
      askedBy(prescribe({ program: one, records: [], today: '2026-11-25', archer: { ageYears } }));
    expect([11, 12, 15, 16].map((age) => at(age).totalMs)).toEqual([5000, 78_400, 78_400, 156_800]);
  });

  it('a nine-year-old rests 20 s between holds, whatever the file says', () => {
    const quick = trialProgram({ rest: { seconds: 5 }, setRest: 5 });
    const given = prescribe({ program: quick, records: [], today: '2026-11-25', archer: { ageYears: 9 } });
    expect(given.blocks.map(({ restMs }) => restMs)).toEqual([20_000]);
  });

  it('no weight is added before 16, and none was asked of whom the file gives some', () => {
    const heavy = trialProgram({ addedWeight: 4, ladder: undefined });
    for (const ageYears of [9, 12, 15]) {
      const given = prescribe({ program: heavy, records: [], today: '2026-11-25', archer: { ageYears } });
      expect(askedBy(given).weightLbf).toBe(0);
    }
  });

  it('says that age is why: neither a coach nor two weeks bring weight before 16', () => {
    const ladder = { rungs: [{ raise: 'addedWeight', by: 2, until: 8 }] };
    const ofCoach = trialProgram({ addedWeight: 4, ladder }, { author: 'Kim' });
    const reasonsAt = (ageYears: number) =>
      prescribe({ program: ofCoach, records: [], today: '2026-11-25', archer: { ageYears } }).reasons;
    const young = reasonsAt(14);
    expect(young.find(({ rule }) => rule === 'ageWeight')?.facts).toMatchObject({
      ageYears: 14,
      fromLbf: 4,
      addedWeight: 0,
    });
    const said = young.map(({ change }) => change).join(' ');
    expect(said).toContain('no added weight under 16, instead of 4 lb');
    expect(said).toContain('More weight would come next, but 0 lb added is the most.');
    expect(said).not.toMatch(/coach's file|two weeks/);
    expect(reasonsAt(16).map(({ rule }) => rule)).toContain('weightWaits');
  });

  it('the bands of age begin at 12 and at 16', () => {
    const toolAt = (ageYears: number) =>
      prescribe({ program: trialProgram(), records: [], today: '2026-11-25', archer: { ageYears } }).tool;
    expect([11, 12, 15, 16].map(toolAt)).toEqual(['band', 'light-bow', 'light-bow', 'bow']);
  });
});
