import { describe, expect, it } from 'vitest';
import type { Archer } from './archer-limits.ts';
import { prescribe } from './prescribe.ts';
import { trialProgram } from './trial-history.ts';

// Bands: usarchery.org 2020, "Developing strength and endurance with SPTs". Under 11 stretch band, 12-15 light bow, 16 and over their own; 11 itself
// is in none and takes the lighter.

const prescribeFor = (archer: Archer, tool = 'bow') =>
  prescribe({ program: trialProgram({ addedWeight: 2 }, { tool }), records: [], today: '2026-11-25', archer });

describe('age', () => {
  it.each([
    [8, 'bow', 'band'],
    [11, 'bow', 'band'],
    [11, 'light-bow', 'band'],
    [11, 'strap', 'band'],
    [12, 'bow', 'light-bow'],
    [15.9, 'bow', 'light-bow'],
    [15, 'band', 'band'],
    [16, 'bow', 'bow'],
    [70, 'bow', 'bow'],
  ])('%d years and a %s: %s', (ageYears, tool, expected) => {
    expect(prescribeFor({ ageYears }, tool).tool).toBe(expected);
  });

  it('takes off added weight under 16, and says so', () => {
    const young = prescribeFor({ ageYears: 15 });
    expect(young.blocks[0]!.addedWeightLbf).toBe(0);
    expect(young.reasons.map(({ rule }) => rule)).toEqual(['start', 'age', 'ageWeight']);
    expect(prescribeFor({ ageYears: 16 }).blocks[0]!.addedWeightLbf).toBe(2);
    expect(prescribeFor({}).blocks[0]!.addedWeightLbf).toBe(2);
  });

  it('gives the cautions of what is really drawn', () => {
    const cautions = prescribeFor({ ageYears: 11 }).cautions.join(' ');
    expect(cautions).toMatch(/stretch band only/);
    expect(cautions).toMatch(/Check the band/);
    expect(cautions).not.toMatch(/drawn string/);
  });

  it('throws on an age that cannot be', () => {
    for (const ageYears of [-1, Number.NaN, 121]) expect(() => prescribeFor({ ageYears })).toThrow(RangeError);
  });
});

describe('a compound bow', () => {
  it('brings a caution where a bow is drawn', () => {
    expect(prescribeFor({ bow: 'compound' }).cautions[0]).toMatch(/compound.*lets down often/);
    expect(prescribeFor({ bow: 'compound' }, 'band').cautions.join()).not.toMatch(/compound/);
    expect(prescribeFor({ bow: 'recurve' }).cautions.join()).not.toMatch(/compound/);
  });
});
