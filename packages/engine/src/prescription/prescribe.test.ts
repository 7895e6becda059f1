import { describe, expect, it } from 'vitest';
import type { DrillRecord } from '../journal/drill-record.ts';
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
      'Holds: hold 30 s to 35 s, after 2 clean days in a row, the last on 22 November. 2 more clean days lead on: hold 35 s to 40 s.',
    );
  });

  it('goes down when a fifth of the reps is missed, by a third of the hold at most', () => {
    const records = [
      trialRecord('2026-11-20', 30),
      trialRecord('2026-11-22', 30),
      trialRecord('2026-11-24', 35, missedTwo),
    ];
    const today = prescribe({ program: trialProgram(), records, today: '2026-11-25' });
    // 0.85 of 35 s, in halves of a second; the rest stays that of 35 s.
    expect(today.blocks[0]).toMatchObject({ holdMs: 29_500, restMs: 70_000 });
    expect(today.reasons[0]!.rule).toBe('stepDown');
  });

  it('counts what was missed against all that was asked, done or not begun', () => {
    const whole = trialRecord('2026-11-24', 35, { 3: 'short', 4: 'short' });
    const stopped = { ...whole, reps: whole.reps.slice(0, 5), prescribedReps: 15 };
    const records = [trialRecord('2026-11-20', 30), trialRecord('2026-11-22', 30), stopped];
    // Two of fifteen are less than the fifth that the file allows; two of the five that were done would be more.
    expect(holdOf(trialProgram({ sets: 3 }), records, '2026-11-25')).toBe(35);
  });

  it('rests between sets as between reps where a rung adds sets to a block without a set rest', () => {
    const ten = trialRecord('2026-11-24', 30);
    const oneSet = { ...ten, reps: ten.reps.slice(0, 5), prescribedReps: 5 };
    const rungs = [{ raise: 'sets', by: 1, until: 3 }];
    const climb = { rungs, climbAfter: { cleanSessions: 1 } };
    const program = trialProgram({ sets: 1, setRest: undefined, ladder: climb });
    const [block] = prescribe({ program, records: [oneSet], today: '2026-11-25' }).blocks;
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
    expect(reasons[0]!.facts).toMatchObject({ level: 2000, top: 2000 });
    expect(reasons[0]!.change).toMatch(/goes on, but only its first 2000 steps are counted/);
    expect(reasons[0]!.change).not.toMatch(/top/);
  });

  it('goes by what a camera saw, and says so', () => {
    const asClock = trialRecord('2026-11-24', 30);
    const seenTo = (toMs: number) => ({
      ...asClock,
      reps: asClock.reps.map((rep) => ({ ...rep, seen: { fromMs: 0, toMs } })),
    });
    const on = (record: DrillRecord) => prescribe({ program: trialProgram(), records: [record], today: '2026-11-25' });
    // Let down at 21 s of 30 s: by the clock all held, in truth none. 0.85 of 21 s, in halves of a second.
    const early = on(seenTo(21_000));
    expect(early.blocks[0]!.holdMs).toBe(17_500);
    expect(early.reasons.find(({ rule }) => rule === 'seen')).toMatchObject({
      block: 0,
      facts: { on: '2026-11-24', reps: 10, clockSeconds: 300, seenSeconds: 210 },
    });
    // As near as half a second is the same.
    expect(on(seenTo(29_700)).blocks).toEqual(on(asClock).blocks);
    expect(on(seenTo(29_700)).reasons).toEqual(on(asClock).reasons);
    // Drawn 3 s late, held to the end: nothing is missed, and nothing is climbed by.
    const late = on({
      ...asClock,
      reps: asClock.reps.map((rep) => ({ ...rep, seen: { fromMs: 3_000, toMs: 30_000 } })),
    });
    expect(late.blocks[0]!.holdMs).toBe(30_000);
  });

  it('goes below its foot where the foot was not held', () => {
    expect(holdOf(trialProgram(), [trialRecord('2026-11-24', 30, missedTwo)], '2026-11-25')).toBe(25.5);
  });

  it('lets unsure reps neither help nor break a row', () => {
    const unsure = { 3: 'unsure', 4: 'unsure', 5: 'unsure', 6: 'unsure' } as const;
    const records = [
      trialRecord('2026-11-20', 30),
      trialRecord('2026-11-21', 30, unsure),
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
    const hurt = [trialRecord('2026-11-20', 30), trialRecord('2026-11-22', 30, {}, { pain: true })];
    expect(holdOf(trialProgram(), hurt, '2026-11-25')).toBeLessThan(30);
  });

  it('sets the hold back when weight is added, not before a fortnight has passed', () => {
    const days = [1, 3, 5, 7, 9, 11, 13, 15, 17];
    const holds = [30, 30, 35, 35, 40, 40, 45, 45, 45];
    const records = days.map((day, at) => trialRecord(`2026-11-${String(day).padStart(2, '0')}`, holds[at]!));
    expect(
      prescribe({ program: trialProgram(), records: records.slice(0, 8), today: '2026-11-17' }).blocks[0],
    ).toMatchObject({
      holdMs: 30_000,
      addedWeightLbf: 2,
    });
    expect(
      prescribe({ program: trialProgram(), records: records.slice(0, 7), today: '2026-11-14' }).blocks[0],
    ).toMatchObject({
      holdMs: 45_000,
      addedWeightLbf: 0,
    });
  });

  it('steps down after a layoff of the file, and comes back in steps', () => {
    const program = trialProgram({ ladder: { ...trialLadder, layoff: [{ days: 6, stepsDown: 1 }] } });
    const records = [trialRecord('2026-11-01', 30), trialRecord('2026-11-02', 30)];
    expect(holdOf(program, records, '2026-11-07')).toBe(35);
    expect(holdOf(program, records, '2026-11-08')).toBe(30);
    expect(holdOf(program, [...records, trialRecord('2026-11-08', 30)], '2026-11-09')).toBeLessThanOrEqual(35);
  });

  it('keeps a share of the reps in a deload week', () => {
    const program = trialProgram({ ladder: { ...trialLadder, deload: { everyWeeks: 2, keep: 0.6 } } });
    const today = prescribe({ program, records: [trialRecord('2026-11-18', 30)], today: '2026-11-25' });
    expect(today.blocks[0]!.reps).toBe(3);
    expect(today.reasons.map(({ rule }) => rule)).toContain('deload');
  });

  it('keeps weekly growth within its limit', () => {
    const program = trialProgram({ ladder: { ...trialLadder, weeklyGrowth: 1.1 } });
    const records = [trialRecord('2026-11-12', 30), trialRecord('2026-11-17', 30), trialRecord('2026-11-23', 30)];
    const { blocks, reasons } = prescribe({ program, records, today: '2026-11-25' });
    // The seven days to 18 November held 600 s: 660 s may be held, 300 s are done, and 360 s are left: 10 x 35 s.
    expect(blocks[0]).toMatchObject({ sets: 2, reps: 5 });
    const more = [...records, trialRecord('2026-11-24', 35)];
    const limited = prescribe({ program, records: more, today: '2026-11-25' });
    expect(limited.blocks[0]).toMatchObject({ sets: 1, reps: 1 }); // 10 s are left
    expect(limited.reasons.find(({ rule }) => rule === 'weeklyGrowth')!.change).toMatch(
      /not a proven protection: Buist and others found .* in 2008/,
    );
    expect(reasons.map(({ rule }) => rule)).not.toContain('weeklyGrowth');
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

  it.each(builtInPrograms.filter(({ kind }) => kind !== 'test').map((program) => [program.title, program] as const))(
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
