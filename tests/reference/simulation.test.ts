import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { inventedArchers } from '../simulation/invented-archers.ts';
import { type LivedDay, type LivedYear, liveYear } from '../simulation/live-year.ts';
import { failedCount } from '../simulation/year-beside-fixed.ts';
import { yearsWithout } from '../simulation/year-cautions.ts';
import { yearReport } from '../simulation/year-report.ts';

// Bounds come from the program files and from docs/prescription.md; the archers are invented.

const years = new Map(inventedArchers.map((archer) => [archer.name, liveYear(archer)]));
const fixed = inventedArchers.map((archer) => liveYear(archer, 'fixed'));
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
      expect(days.length).toBeGreaterThan(60);
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

  it('keeps the growth limit of the file: never above 1.1 times the most of the last four training weeks, or one rep a day', () => {
    const weeks = of('Keen').weeks.filter(({ heldMs }) => heldMs > 0);
    expect(weeks.length).toBe(52);
    for (const [index, { prescribedMs, drillsCount, askedMs }] of weeks.entries()) {
      if (index === 0) continue;
      const last = weeks.slice(Math.max(0, index - 4), index);
      const most = Math.max(...last.map(({ heldMs }) => heldMs));
      expect(prescribedMs).toBeLessThanOrEqual(1.1 * most + drillsCount * askedMs);
    }
  });

  it('starts lower after ten weeks away than before, and climbs back over sessions', () => {
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
      expect(prescription.tool).not.toBe('bow');
      expect(prescription.blocks.every(({ addedWeightLbf }) => addedWeightLbf === 0)).toBe(true);
    }
  });

  it('fails fewer drills than the program as its file says would have failed, and loses no drill in the session', () => {
    let [own, plan] = [0, 0];
    for (const [at, year] of all.entries()) {
      own += failedCount(year);
      plan += failedCount(fixed[at]!);
      for (const { record, prescription } of year.days) {
        expect(record.open).toBeUndefined();
        expect(record.reps.length).toBe(record.prescribedReps);
        expect(record.reps.length).toBe(
          prescription.blocks.reduce((sum, { sets, reps: count }) => sum + sets * count, 0),
        );
      }
    }
    expect(own).toBeLessThan(plan / 2);
  });

  it('holds nobody back for nothing: who rests when told to, or is sixteen, comes to as much as with the fixed plan, and fails less', () => {
    for (const { what, own, fixed: plan } of yearsWithout()) {
      if (what.includes('Keen')) {
        expect(own.endHoldSeconds).toBeGreaterThan(of('Keen').endHoldSeconds);
        continue;
      }
      expect(failedCount(own)).toBeLessThan(failedCount(plan));
      expect(own.endHoldSeconds).toBeGreaterThan(plan.endHoldSeconds - 1);
    }
  });

  it('leads nobody down to nothing: at the end each is prescribed a hold that is worth holding', () => {
    for (const { archer, weeks } of all) {
      const foot = Math.min(...archer.program.blocks.map(({ hold }) => hold));
      const asked = Math.max(...weeks.slice(-4).map(({ askedMs }) => askedMs)) / 1000;
      // Own bound, no source: a tenth of the longest hold, or half of where the program begins.
      expect(asked).toBeGreaterThanOrEqual(Math.min(0.1 * archer.maxHoldSeconds, foot / 2));
    }
  });

  it('is what the page shows', () => {
    const { tables, picture } = yearReport();
    expect(readFileSync('docs/simulation.md', 'utf8')).toContain(
      `<!-- tables -->\n\n${tables}\n<!-- end of tables -->`,
    );
    expect(readFileSync('docs/pictures/simulation.svg', 'utf8')).toBe(picture);
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
