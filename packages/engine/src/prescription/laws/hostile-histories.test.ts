import { prescribe } from '@larkhold/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLifePlan, askedBy, drillOf, inputOf, live } from '../../../../../tests/fixtures/prescription/any-life.ts';
import type { DrillRecord } from '../../journal/drill-record.ts';
import { builtInPrograms } from '../../program/built-in-programs.ts';
import { dayOfNumber } from '../../units/calendar-day.ts';

// Odd records are reported, nothing is lost, and they never make more load.

const rep = {
  block: 0,
  set: 0,
  rep: 0,
  hand: 'usual',
  prescribedMs: 90_000,
  heldMs: 90_000,
  outcome: 'held',
  addedWeightLbf: 20,
} as const;
const noDays = ['2026-02-30', '2026-13-01', '0000-00-00', 'tomorrow', ''];

describe('hostile histories', { timeout: 300_000 }, () => {
  it('impossible dates and future records ask for nothing more, and are reported', () => {
    fc.assert(
      fc.property(anyLifePlan(), fc.constantFrom(...noDays), fc.integer({ min: 1, max: 900 }), (plan, noDay, later) => {
        const life = live(plan);
        const last = life.days.at(-1)!;
        const input = inputOf(life, last);
        const odd = (id: string, date: string): DrillRecord => ({
          ...{ id, program: last.program.title, date, startedAt: `${date}T06:30:00Z`, endedAt: `${date}T06:50:00Z` },
          ...{ reps: Array.from({ length: 30 }, () => rep), prescribedReps: 30, effort: 1, pain: false },
          ...(last.program.id === undefined ? {} : { programId: last.program.id }),
        });
        const records = [odd('no day', noDay), ...input.records, odd('later', dayOfNumber(last.day + later))];
        const given = prescribe({ ...input, records });
        expect(given.blocks).toEqual(last.given.blocks);
        expect(given.rest).toEqual(last.given.rest);
        const rules = given.reasons.map(({ rule }) => rule);
        expect(rules).toContain('impossibleDate');
        expect(rules).toContain('future');
        expect(input.records.every((one) => records.includes(one))).toBe(true);
      }),
      { seed: 1301, numRuns: 2000 },
    );
  });

  it('an open question is no answer: it neither clears pain nor leads further on the way back', () => {
    fc.assert(
      fc.property(anyLifePlan(), (plan) => {
        const life = live(plan);
        const last = life.days.at(-1)!;
        const input = inputOf(life, last);
        const records = input.records.map((one) => (one.pain === false ? { ...one, pain: undefined } : one));
        const days = input.days.map((one) => (one.pain === false ? { ...one, pain: undefined } : one));
        const hurt = [...records, ...days].some(({ pain, date }) => pain && date <= input.today);
        if (hurt) expect(prescribe({ ...input, records, days }).rest).toBeDefined();
      }),
      { seed: 1302, numRuns: 2000 },
    );
  });

  it('many drills on one day lead to no longer hold and no more weight than one', () => {
    fc.assert(
      fc.property(anyLifePlan(), fc.integer({ min: 2, max: 12 }), (plan, count) => {
        const life = live(plan);
        const last = life.days.at(-1)!;
        if (!last.record || last.program.kind === 'test' || last.record.reps.some(({ outcome }) => outcome !== 'held'))
          return;
        const after = (times: number) => {
          const more = Array.from({ length: times }, (_, at) => ({
            ...structuredClone(last.record!),
            id: `again ${at}`,
          }));
          const records = [...last.records, ...more];
          return askedBy(
            prescribe({ ...inputOf(life, last), readiness: undefined, records, today: dayOfNumber(last.day + 2) }),
          );
        };
        const [one, many] = [after(1), after(count)];
        expect(many.holdMs).toBeLessThanOrEqual(one.holdMs);
        expect(many.weightLbf).toBeLessThanOrEqual(one.weightLbf);
      }),
      { seed: 1303, numRuns: 2000 },
    );
  });

  it('drills of a program that nobody has any more count for the body, are kept, and lead no other program up', () => {
    const program = builtInPrograms.find(({ title }) => title === 'Holding')!;
    const full = (day: number) => prescribe({ program, records: [], today: dayOfNumber(day) });
    const own = [20_000, 20_002].map((day) => drillOf(program, full(day), { manner: 'clean', saysWhy: false }, 0));
    const gone = (day: number, more: Partial<DrillRecord> = {}): DrillRecord => ({
      ...{
        id: `gone ${day}`,
        program: 'Gone',
        programId: 'd0b1a7f4-5a0e-4b3c-8f50-2c1f0a9b7e66',
        date: dayOfNumber(day),
      },
      ...{ startedAt: `${dayOfNumber(day)}T20:30:00Z`, endedAt: `${dayOfNumber(day)}T20:50:00Z` },
      ...{ reps: Array.from({ length: 30 }, (_, at) => ({ ...rep, rep: at })), prescribedReps: 30, ...more },
    });
    const after = (records: DrillRecord[], day = 20_003) => prescribe({ program, records, today: dayOfNumber(day) });
    // Thirty holds of 90 s with 20 lb on the same days ask for nothing more;
    const records = [...own, gone(20_000), gone(20_002)];
    const [alone, beside] = [after(own), after(records)].map(askedBy);
    expect(beside).toEqual(alone);
    expect(records).toHaveLength(4);
    // pain in one is pain, and no days away have passed after one.
    expect(after([...own, gone(20_003, { pain: true })]).blocks).toEqual([]);
    expect(after([...own, gone(20_030)], 20_031).reasons.map(({ rule }) => rule)).not.toContain('away');
  });

  it('a thousand drills on one day climb one step', () => {
    const program = builtInPrograms.find(({ title }) => title === 'Holding')!;
    const given = prescribe({ program, records: [], today: dayOfNumber(20_000) });
    const drill = drillOf(program, given, { manner: 'clean', saysWhy: false }, 0);
    const records = Array.from({ length: 1000 }, (_, at) => ({ ...drill, reps: [...drill.reps], id: `${at}` }));
    const next = prescribe({ program, records, today: dayOfNumber(20_002) });
    expect(askedBy(next).holdMs).toBe(askedBy(given).holdMs); // one clean day of two
  });
});
