import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DrillRecord, Outcome } from '../journal/drill-record.ts';
import { builtInPrograms } from '../program/built-in-programs.ts';
import type { Program } from '../program/program.ts';
import { dayOfNumber } from '../units/calendar-day.ts';
import { prescribe } from './prescribe.ts';
import { missedTwo, trialLadder, trialProgram, trialRecord } from './trial-history.ts';

// Expected numbers follow the rules of the program file page; they are its definitions, not measurements.

const holdOf = (program: Program, records: DrillRecord[], today: string) =>
  prescribe({ program, records, today }).blocks[0]!.holdMs / 1000;

describe('the ladder', () => {
  it('begins with the block as written, and says so', () => {
    const today = prescribe({ program: trialProgram(), records: [], today: '2026-11-25' });
    expect(today.blocks[0]).toMatchObject({ sets: 2, reps: 5, holdMs: 30_000, restMs: 60_000 });
    expect(today.reasons[0]).toMatchObject({ rule: 'start', block: 0 });
  });

  it('climbs after two clean sessions in a row, and the rest follows the hold', () => {
    const records = [trialRecord('2026-11-20', 30), trialRecord('2026-11-22', 30)];
    const today = prescribe({ program: trialProgram(), records, today: '2026-11-25' });
    expect(today.blocks[0]).toMatchObject({ holdMs: 35_000, restMs: 70_000 });
    expect(today.reasons[0]!.change).toBe(
      'Holds: hold 30 s to 35 s, because of 2 clean sessions in a row, the last on 22 November. 2 more clean sessions to the next step.',
    );
  });

  it('steps down when a fifth of the reps is missed', () => {
    const records = [
      trialRecord('2026-11-20', 30),
      trialRecord('2026-11-22', 30),
      trialRecord('2026-11-24', 35, missedTwo),
    ];
    const today = prescribe({ program: trialProgram(), records, today: '2026-11-25' });
    expect(today.blocks[0]!.holdMs).toBe(30_000);
    expect(today.reasons[0]!.rule).toBe('stepDown');
  });

  it('rests between sets as between reps where a rung adds sets to a block without a set rest', () => {
    const rungs = [{ raise: 'sets', by: 1, until: 3 }];
    const climb = { rungs, climbAfter: { cleanSessions: 1 } };
    const program = trialProgram({ sets: 1, setRest: undefined, ladder: climb });
    const [block] = prescribe({ program, records: [trialRecord('2026-11-24', 30)], today: '2026-11-25' }).blocks;
    expect(block).toMatchObject({ sets: 2, setRestMs: 60_000 });
    const none = trialProgram({ sets: 2, setRest: 0 });
    expect(prescribe({ program: none, records: [], today: '2026-11-25' }).blocks[0]!.setRestMs).toBe(0);
  });

  it('says of a ladder longer than it counts that it goes on', () => {
    const rungs = [
      { raise: 'hold', by: 0.1, until: 180 },
      { raise: 'reps', by: 1, until: 60, resets: { hold: 0.5 } },
    ];
    const program = trialProgram({ hold: 0.5, reps: 1, sets: 1, ladder: { rungs, climbAfter: { cleanSessions: 1 } } });
    const reps = Array.from({ length: 60 }, (_, rep) => ({
      ...{ block: 0, set: 0, rep, hand: 'usual' as const, prescribedMs: 180_000, heldMs: 180_000 },
      outcome: 'held' as const,
    }));
    const records = Array.from({ length: 2100 }, (_, index) => ({
      ...trialRecord(dayOfNumber(18_000 + index), 180),
      ...{ reps, prescribedReps: 60 },
    }));
    const { reasons } = prescribe({ program, records, today: dayOfNumber(20_100) });
    expect(reasons[0]!.facts.level).toBe(reasons[0]!.facts.top);
    expect(reasons[0]!.change).toMatch(/goes on, but only its first 2000 steps are counted/);
    expect(reasons[0]!.change).not.toMatch(/top/);
  });

  it('does not go below its foot', () => {
    expect(holdOf(trialProgram(), [trialRecord('2026-11-24', 30, missedTwo)], '2026-11-25')).toBe(30);
  });

  it('lets unsure reps neither help nor break a row', () => {
    const records = [
      trialRecord('2026-11-20', 30),
      trialRecord('2026-11-21', 30, { 3: 'unsure' }),
      trialRecord('2026-11-22', 30),
    ];
    expect(holdOf(trialProgram(), records.slice(0, 2), '2026-11-25')).toBe(30);
    expect(holdOf(trialProgram(), records, '2026-11-25')).toBe(35);
  });

  it('does not climb on effort over the limit or on pain', () => {
    expect(
      holdOf(
        trialProgram(),
        [trialRecord('2026-11-20', 30), trialRecord('2026-11-22', 30, {}, { effort: 8 })],
        '2026-11-25',
      ),
    ).toBe(30);
    expect(
      holdOf(
        trialProgram(),
        [trialRecord('2026-11-20', 30), trialRecord('2026-11-22', 30, {}, { pain: true })],
        '2026-11-25',
      ),
    ).toBe(30);
  });

  it('sets the hold back when weight is added', () => {
    const records = [30, 30, 35, 35, 40, 40, 45, 45].map((hold, index) => trialRecord(`2026-11-${10 + index}`, hold));
    const [block] = prescribe({ program: trialProgram(), records, today: '2026-11-18' }).blocks;
    expect(block).toMatchObject({ holdMs: 30_000, addedWeightLbf: 2 });
  });

  it('steps down after a layoff, and stays there', () => {
    const program = trialProgram({ ladder: { ...trialLadder, layoff: [{ days: 10, stepsDown: 1 }] } });
    const records = [trialRecord('2026-11-01', 30), trialRecord('2026-11-02', 30)];
    expect(holdOf(program, records, '2026-11-11')).toBe(35);
    expect(holdOf(program, records, '2026-11-12')).toBe(30);
    expect(holdOf(program, [...records, trialRecord('2026-11-12', 30)], '2026-11-13')).toBe(30);
  });

  it('keeps a share of the reps in a deload week', () => {
    const program = trialProgram({ ladder: { ...trialLadder, deload: { everyWeeks: 2, keep: 0.6 } } });
    const today = prescribe({ program, records: [trialRecord('2026-11-18', 30)], today: '2026-11-25' });
    expect(today.blocks[0]!.reps).toBe(3);
    expect(today.reasons.map(({ rule }) => rule)).toContain('deload');
  });

  it('keeps weekly growth within its limit', () => {
    const program = trialProgram({ ladder: { ...trialLadder, weeklyGrowth: 1.1 } });
    const records = [trialRecord('2026-11-17', 30), trialRecord('2026-11-23', 30)];
    const { blocks, reasons } = prescribe({ program, records, today: '2026-11-25' });
    expect(blocks[0]).toMatchObject({ sets: 1, reps: 1 }); // 330 s allowed, 300 s done
    expect(reasons.at(-1)!.change).toMatch(/not a proven protection: Buist and others found .* in 2008/);
  });
});

describe('prescribe', () => {
  it('matches by id where both have one, else by title', () => {
    const id = builtInPrograms[0]!.id!;
    const program = { ...trialProgram(), id };
    const other = '00000000-0000-4000-8000-000000000000';
    const two = (more: Partial<DrillRecord>) => [
      trialRecord('2026-11-20', 30, {}, more),
      trialRecord('2026-11-22', 30, {}, more),
    ];
    expect(holdOf(program, two({ programId: other }), '2026-11-25')).toBe(30);
    expect(holdOf(program, two({ programId: id, program: 'Renamed' }), '2026-11-25')).toBe(35);
    expect(holdOf(program, two({}), '2026-11-25')).toBe(35);
  });

  it('leaves out what lies in the future, and says so', () => {
    const records = [trialRecord('2026-11-26', 30), trialRecord('2026-11-27', 30)];
    const today = prescribe({ program: trialProgram(), records, today: '2026-11-25' });
    expect(today.blocks[0]!.holdMs).toBe(30_000);
    expect(today.reasons.at(-1)).toMatchObject({ rule: 'future', facts: { records: 2 } });
  });

  it('throws on a day, minutes or a program that cannot be', () => {
    expect(() => prescribe({ program: trialProgram(), records: [], today: '2026-02-30' })).toThrow(RangeError);
    expect(() => prescribe({ program: trialProgram(), records: [], today: '2026-11-25', minutes: 1.5 })).toThrow(
      RangeError,
    );
    expect(() => prescribe({ program: { title: 'x' } as Program, records: [], today: '2026-11-25' })).toThrow(
      TypeError,
    );
  });

  it.each(builtInPrograms.map((program) => [program.title, program] as const))(
    'fits %s to any minutes, from two',
    (_, program) => {
      for (const minutes of [2, 3, 5, 8, 12, 20, 45]) {
        const { durationMs, blocks } = prescribe({ program, records: [], today: '2026-11-25', minutes });
        expect(durationMs).toBeLessThanOrEqual(minutes * 60_000);
        expect(blocks.length).toBeGreaterThan(0);
      }
    },
  );

  it('finds the most time under tension that fits, as trying all does', () => {
    const program = trialProgram({ sets: 4, reps: 6, setRest: 45, ladder: undefined });
    for (let minutes = 2; minutes < 40; minutes++) {
      let best = 0;
      for (let sets = 1; sets <= 4; sets++) {
        for (let reps = 1; reps <= 6; reps++) {
          const seconds = 10 + sets * (reps * 36 + (reps - 1) * 60) + (sets - 1) * 45;
          if (seconds <= minutes * 60) best = Math.max(best, sets * reps);
        }
      }
      const [block] = prescribe({ program, records: [], today: '2026-11-25', minutes }).blocks;
      expect(block!.sets * block!.reps).toBe(best);
    }
  });
});

describe('over random histories', () => {
  const outcomes = fc.array(fc.constantFrom<Outcome>('held', 'held', 'held', 'short', 'skipped', 'unsure'), {
    minLength: 10,
    maxLength: 10,
  });
  const history = fc.array(
    fc.tuple(fc.integer({ min: 20_000, max: 20_400 }), fc.integer({ min: 6, max: 9 }), outcomes),
    { maxLength: 40 },
  );
  const program = trialProgram({
    ladder: {
      ...trialLadder,
      layoff: [
        { days: 10, stepsDown: 1 },
        { days: 30, stepsDown: 3 },
      ],
      deload: { everyWeeks: 4, keep: 0.6 },
    },
  });
  const build = (entries: readonly (readonly [number, number, Outcome[]])[]) =>
    entries.map(([day, hold, list], index) => ({ ...trialRecord(dayOfNumber(day), hold * 5, list), id: `r${index}` }));
  const today = dayOfNumber(20_400);
  const levelOf = (records: DrillRecord[]) => prescribe({ program, records, today }).reasons[0]!.facts.level as number;

  it('stays in range, does not depend on order, and moves the right way', () => {
    fc.assert(
      fc.property(history, (entries) => {
        const records = build(entries);
        const given = prescribe({ program, records, today });
        const [block] = given.blocks;
        expect(block!.holdMs >= 30_000 && block!.holdMs <= 45_000 && block!.reps >= 1 && block!.reps <= 5).toBe(true);
        expect(JSON.stringify(given)).not.toMatch(/NaN|Infinity|null/);
        expect(prescribe({ program, records: [...records].reverse(), today })).toEqual(given);
        const extra = (list: Partial<Record<number, Outcome>>) => ({
          ...trialRecord(today, 45, list),
          id: 'z',
          startedAt: `${today}T23:00:00Z`,
        });
        expect(levelOf([...records, extra({})])).toBeGreaterThanOrEqual(levelOf(records));
        expect(levelOf([...records, extra(missedTwo)])).toBeLessThanOrEqual(levelOf(records));
      }),
      { seed: 48, numRuns: 300 },
    );
  });
});
