import { describe, expect, it } from 'vitest';
import { inventedArchers } from '../simulation/invented-archers.ts';
import { type LivedDay, type LivedYear, liveYear } from '../simulation/live-year.ts';

// Bounds come from the program files and from docs/prescription.md; the archers are invented.

const years = new Map(inventedArchers.map((archer) => [archer.name, liveYear(archer)]));
const of = (name: string): LivedYear => years.get(name)!;
const all = [...years.values()];
const doseMs = ({ prescription }: LivedDay): number =>
  prescription.blocks.reduce((sum, { sets, reps, holdMs }) => sum + sets * reps * holdMs, 0);
const rulesOf = ({ prescription }: LivedDay): string[] => prescription.reasons.map(({ rule }) => rule);

describe('a simulated year', () => {
  it('is the same each time', () => {
    expect(liveYear(inventedArchers[1]!)).toEqual(of('Irregular'));
  });

  it('never asks for less than one rep, nor for more than the file’s ladder can reach', () => {
    for (const { archer, days } of all) {
      expect(days.length).toBeGreaterThan(100);
      for (const { prescription } of days) {
        for (const { block, sets, reps, holdMs, addedWeightLbf } of prescription.blocks) {
          const file = archer.program.blocks[block]!;
          const most = (lever: string, start: number): number =>
            Math.max(
              start,
              ...(file.ladder?.rungs ?? []).filter(({ raise }) => raise === lever).map(({ until }) => until),
            );
          expect(sets * reps).toBeGreaterThanOrEqual(1);
          expect(sets).toBeLessThanOrEqual(most('sets', file.sets));
          expect(reps).toBeLessThanOrEqual(most('reps', file.reps));
          expect(holdMs).toBeLessThanOrEqual(most('hold', file.hold) * 1000);
          expect(addedWeightLbf).toBeLessThanOrEqual(most('addedWeight', file.addedWeight));
        }
      }
    }
  });

  it('keeps the growth limit of the file: 1.1 times the mean of the last four training weeks, or one rep a day', () => {
    const weeks = of('Keen').weeks.filter(({ heldMs }) => heldMs > 0);
    expect(weeks.length).toBe(52);
    for (const [index, { prescribedMs, drillsCount, askedMs }] of weeks.entries()) {
      if (index === 0) continue;
      const last = weeks.slice(Math.max(0, index - 4), index);
      const mean = last.reduce((sum, { heldMs }) => sum + heldMs, 0) / last.length;
      expect(prescribedMs).toBeLessThanOrEqual(1.1 * mean + drillsCount * askedMs);
    }
  });

  it('starts lower after ten weeks away than it stood, and climbs back over sessions', () => {
    const { days } = of('Returning');
    const at = days.findIndex(({ day }) => day >= 170);
    expect(days[at]!.day - days[at - 1]!.day).toBeGreaterThan(60);
    expect(rulesOf(days[at]!)).toContain('layoff');
    expect(doseMs(days[at]!)).toBeLessThan(doseMs(days[at - 1]!));
  });

  it('makes a way back of the days after pain, with the day named', () => {
    const { days } = of('Returning');
    for (const painDay of [190, 280]) {
      const next = days.find(({ day }) => day > painDay)!;
      expect(days.some(({ day }) => day === painDay)).toBe(false);
      expect(rulesOf(next)).toContain('wayBack');
      expect(next.prescription.cautions[0]).toContain('see a doctor or a physiotherapist');
    }
  });

  it('eases the two weeks before the competition', () => {
    const before = of('Keen').days.filter(({ date }) => date >= '2026-06-06' && date <= '2026-06-20');
    expect(before.length).toBeGreaterThan(8);
    for (const day of before) expect(rulesOf(day).some((rule) => rule === 'taper' || rule === 'deload')).toBe(true);
  });

  it('gives two minutes something that fits, and a fifteen-year-old a light bow without added weight', () => {
    const { days } = of('Irregular');
    const short = days.filter((day) => rulesOf(day).includes('minutes'));
    expect(short.length).toBeGreaterThan(5);
    for (const { prescription } of short) {
      expect(prescription.durationMs).toBeLessThanOrEqual(120_000);
      expect(prescription.blocks.length).toBeGreaterThan(0);
    }
    for (const { prescription } of days) {
      expect(prescription.tool).toBe('light-bow');
      expect(prescription.blocks.every(({ addedWeightLbf }) => addedWeightLbf === 0)).toBe(true);
    }
  });

  it('asks for what can be held: nearly every rep ends held, and no drill goes missing in the session', () => {
    for (const { days } of all) {
      const reps = days.flatMap(({ record }) => record.reps);
      const short = reps.filter(({ outcome }) => outcome === 'short').length;
      // Mishaps alone are 1 to 3 % of the reps; twice that would mean that the numbers are too high for the archer. Own bound, no source.
      expect(short / reps.length).toBeLessThan(0.06);
      for (const { record, prescription } of days) {
        expect(record.open).toBeUndefined();
        expect(record.reps.length).toBe(record.prescribedReps);
        expect(record.reps.length).toBe(
          prescription.blocks.reduce((sum, { sets, reps: count }) => sum + sets * count, 0),
        );
      }
    }
  });

  it('has finite loads all year', () => {
    for (const { weeks } of all) {
      for (const { load, ratio, monotony } of weeks) {
        expect(load).toBeGreaterThanOrEqual(0);
        for (const value of [load, ratio ?? 0, monotony ?? 0]) expect(Number.isFinite(value)).toBe(true);
      }
    }
  });
});
