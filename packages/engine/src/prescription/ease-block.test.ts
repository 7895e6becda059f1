import { describe, expect, it } from 'vitest';
import type { DayEntry } from '../journal/journal.ts';
import { MANY_ARROWS } from './ease-block.ts';
import { type PrescribeInput, prescribe } from './prescribe.ts';
import { trialProgram, trialRecord } from './trial-history.ts';

// The shares and thresholds are ours: common practice, no source. The taper is from memory: Bosquet et al. 2007, 41-60 % less for two weeks.

const today = '2026-11-25';
const prescribeToday = (change: Partial<PrescribeInput>) =>
  prescribe({ program: trialProgram({ reps: 10 }), records: [], today, ...change });
const repsOf = (change: Partial<PrescribeInput>) => prescribeToday(change).blocks[0]!.reps;
const arrowsOn = (date: string, count: number): DayEntry => ({ date, arrows: [{ kind: 'practice', count }] });

describe('pain', () => {
  const records = [trialRecord('2026-11-11', 30, {}, { pain: true })];

  it('halves the reps for fourteen days, and the caution says the day', () => {
    expect(repsOf({ records })).toBe(5);
    expect(prescribeToday({ records }).cautions[0]).toMatch(/^There was pain on 11 November\. Stop .* see a doctor/);
  });

  it('no longer counts after that, nor after a session without it', () => {
    expect(repsOf({ records, today: '2026-11-26' })).toBe(10);
    expect(prescribeToday({ records, today: '2026-11-26' }).cautions[0]).not.toMatch(/11 November/);
    expect(repsOf({ records: [...records, trialRecord('2026-11-20', 30)] })).toBe(10);
  });

  it('is read from the diary too', () => {
    expect(repsOf({ days: [{ date: '2026-11-24', pain: true }] })).toBe(5);
    expect(repsOf({ days: [{ date: '2026-11-24', pain: true, removed: true }] })).toBe(10);
    expect(repsOf({ days: [{ date: '2026-11-01', pain: true }] })).toBe(10);
  });
});

describe('arrows', () => {
  it('ease a little when there were many today or yesterday', () => {
    expect(repsOf({ days: [arrowsOn('2026-11-24', MANY_ARROWS)] })).toBe(8);
    expect(repsOf({ days: [arrowsOn(today, MANY_ARROWS)] })).toBe(8);
    expect(repsOf({ days: [arrowsOn('2026-11-24', MANY_ARROWS - 1)] })).toBe(10);
    expect(repsOf({ days: [arrowsOn('2026-11-23', 400)] })).toBe(10);
    const { reasons } = prescribeToday({ days: [arrowsOn('2026-11-24', 150)] });
    expect(reasons[1]!.change).toMatch(/8 reps instead of 10, because you shot 150 arrows yesterday.*no source/);
  });
});

describe('readiness', () => {
  it("is today's own word, or the diary's", () => {
    expect(repsOf({ readiness: 'heavy' })).toBe(7);
    expect(repsOf({ days: [{ date: today, readiness: 'heavy' }] })).toBe(7);
    expect(repsOf({ readiness: 'fresh', days: [{ date: today, readiness: 'heavy' }] })).toBe(10);
  });

  it('is not multiplied with another cut: the deepest acts', () => {
    const records = [trialRecord('2026-11-24', 30, {}, { pain: true, effort: 10 })];
    expect(repsOf({ records, readiness: 'heavy' })).toBe(5);
  });
});

describe('a competition', () => {
  it('takes off reps in the two weeks before, not hold', () => {
    const on = (competitionDay: string) => prescribeToday({ competitionDay }).blocks[0]!;
    expect(on('2026-12-10').reps).toBe(10);
    expect(on('2026-12-09')).toMatchObject({ reps: 7, holdMs: 30_000 });
    expect(on('2026-12-03').reps).toBe(7);
    expect(on('2026-12-02')).toMatchObject({ reps: 5, holdMs: 30_000 });
    expect(on('2026-11-24').reps).toBe(10);
  });
});
