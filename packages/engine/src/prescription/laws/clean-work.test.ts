import { type Prescription, prescribe } from '@larkhold/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLifePlan, askedBy, drillOf, inputOf, live } from '../../../../../tests/fixtures/prescription/any-life.ts';
import type { DrillRecord } from '../../journal/drill-record.ts';
import { builtInPrograms } from '../../program/built-in-programs.ts';
import type { Program } from '../../program/program.ts';
import { dayOfNumber } from '../../units/calendar-day.ts';
import type { LadderFacts } from '../reason.ts';
import { trialProgram } from '../trial-history.ts';

// Law: clean work leads on, in the minutes there are. Law: at the top of a ladder the reason says so, with what comes next.

const holding = builtInPrograms.find(({ title }) => title === 'Holding')!;
const clean = { manner: 'clean', saysWhy: false } as const;

/** Clean drills, every other day, without effort. */
function cleanDrills(program: Program, count: number, minutes?: number) {
  let records: DrillRecord[] = [];
  return Array.from({ length: count }, (_, at) => {
    const given = prescribe({
      program,
      records,
      today: dayOfNumber(20_000 + 2 * at),
      minutes,
      archer: { hasClicker: true },
    });
    records = [...records, { ...drillOf(program, given, clean, at), effort: 0 }];
    return given;
  });
}

/** Whether a program has one block that climbs, with nothing in its file that holds it back. */
function isClimbing({ kind, blocks }: Program): boolean {
  const ladder = blocks[0]?.ladder;
  if (kind === 'test' || blocks.length > 1 || !ladder) return false;
  return ladder.climbAfter.cleanSessions <= 3 && ladder.weeklyGrowth === undefined && ladder.deload === undefined;
}

describe('clean work leads on', { timeout: 300_000 }, () => {
  it('within the minutes, and up', () => {
    fc.assert(
      fc.property(anyLifePlan(), fc.integer({ min: 3, max: 40 }), ({ programs }, minutes) => {
        const program = programs.find(isClimbing);
        if (!program) return;
        const drills = cleanDrills(program, 12, minutes);
        for (const { durationMs, reasons } of drills) {
          const isOver = reasons.some(
            ({ rule, facts }) => rule === 'minutes' && 'isOver' in facts && facts.isOver === 1,
          );
          if (!isOver) expect(durationMs).toBeLessThanOrEqual(minutes * 60_000);
        }
        const levels = drills.map(
          ({ reasons }) => reasons.find(({ facts }) => 'level' in facts)!.facts as { level: number; top: number },
        );
        const isPlace = drills.some(({ reasons }) =>
          reasons.some(({ facts }) => 'counts' in facts && facts.counts === 'place'),
        );
        if (!isPlace && levels[0]!.top > 0) expect(levels.at(-1)!.level).toBeGreaterThan(0);
        for (const [at, { level }] of levels.entries())
          if (at > 0) expect(level).toBeGreaterThanOrEqual(levels[at - 1]!.level);
      }),
      { seed: 501, numRuns: 2000 },
    );
  });

  it('what the reason promises comes: after the clean days that it names, and not before', () => {
    fc.assert(
      fc.property(anyLifePlan(), (plan) => {
        const life = live(plan);
        const last = life.days.at(-1)!;
        const { program } = last;
        const isDated = program.blocks.some(({ ladder, addedWeight }) => {
          const raisesWeight = addedWeight > 0 || ladder?.rungs.some(({ raise }) => raise === 'addedWeight');
          return raisesWeight || ladder?.deload !== undefined || ladder?.layoff?.some(({ days }) => days < 3);
        });
        const hurt = [...last.records, ...last.entries].some(({ pain }) => pain) || last.record?.pain;
        if (isDated || hurt || program.kind === 'test' || life.archer.ageYears! < 16) return;
        let records = last.record ? [...last.records, last.record] : [...last.records];
        const on = (day: number) =>
          prescribe({ ...inputOf(life, last), records, minutes: undefined, today: dayOfNumber(day) });
        const standOf = (given: Prescription) =>
          given.reasons.find(({ block, facts }) => block === 0 && 'workHold' in facts)?.facts as
            | LadderFacts
            | undefined;
        const first = on(last.day + 2);
        const stand = standOf(first);
        if (!stand?.needDays || first.reasons.some(({ rule }) => rule === 'away')) return;
        const { needDays, workHold: hold, workReps: reps, workSets: sets } = stand;
        const [block] = prescribe({ program, records: [], today: dayOfNumber(0), archer: { hasClicker: true } }).blocks;
        for (let done = 1; done <= needDays; done++) {
          const blocks = [{ ...block!, holdMs: hold * 1000, reps, sets, addedWeightLbf: 0 }];
          const date = dayOfNumber(last.day + 2 * done);
          const drill = { ...drillOf(program, { blocks, date }, clean, done), id: `clean ${done}`, effort: 0 };
          records = [...records, { ...drill, tool: first.tool }];
          const now = standOf(on(last.day + 2 * done + 2))!;
          const isMoved =
            now.level !== stand.level || now.workHold !== hold || now.workReps !== reps || now.workSets !== sets;
          expect([done, needDays, isMoved]).toEqual([done, needDays, done === needDays]);
          if (isMoved) expect([now.workHold, now.workReps]).toEqual([stand.nextHold, stand.nextReps]);
        }
      }),
      { seed: 504, numRuns: 2000 },
    );
  });

  it('twenty clean minutes every other morning climb, within twenty minutes', () => {
    const drills = cleanDrills(holding, 40, 20);
    for (const { durationMs } of drills) expect(durationMs).toBeLessThanOrEqual(20 * 60_000);
    const asked = drills.map(askedBy);
    expect(Math.max(...asked.map(({ holdMs }) => holdMs))).toBeGreaterThan(asked[0]!.holdMs);
    expect(Math.max(...asked.map(({ weightLbf }) => weightLbf))).toBeGreaterThan(0);
  });

  it('whoever shoots 150 arrows on every day with a drill is eased each time, and climbs in a year all the same', () => {
    // Given a program of ten holds of 5 s that leads to 30 s, drilled every other day, each of them with 150 arrows,
    const program = trialProgram({
      sets: 1,
      reps: 10,
      hold: 5,
      ladder: { rungs: [{ raise: 'hold', by: 5, until: 30 }] },
    });
    let records: DrillRecord[] = [];
    const days = Array.from({ length: 60 }, (_, at) => ({
      date: dayOfNumber(20_000 + 2 * at),
      arrows: [{ kind: 'practice' as const, count: 150 }],
    }));
    const asked = days.map(({ date }, at) => {
      const given = prescribe({ program, records, days: days.slice(0, at + 1), today: date });
      records = [...records, drillOf(program, given, clean, at)];
      expect(given.reasons.map(({ rule }) => rule)).toContain('arrows');
      return askedBy(given);
    });
    // then five drills are as they began, later ones lead up to 30 s, and none is more time at full draw than eight of ten reps, as the first was.
    expect(asked.slice(0, 5).map(({ holdMs }) => holdMs)).toEqual([5000, 5000, 5000, 5000, 5000]);
    expect(asked.at(-1)!.holdMs).toBe(30_000);
    for (const { totalMs } of asked) expect(totalMs).toBeLessThanOrEqual(40_000);
  });

  it('in twenty minutes every other morning with an effort of five and nothing known of the archer', () => {
    let records: DrillRecord[] = [];
    const asked = Array.from({ length: 40 }, (_, at) => {
      const given = prescribe({ program: holding, records, today: dayOfNumber(20_000 + 2 * at), minutes: 20 });
      expect(given.durationMs).toBeLessThanOrEqual(20 * 60_000);
      records = [...records, drillOf(holding, given, clean, at)];
      return askedBy(given);
    });
    expect(Math.max(...asked.map(({ holdMs }) => holdMs))).toBeGreaterThan(asked[0]!.holdMs);
    expect(Math.max(...asked.map(({ weightLbf }) => weightLbf))).toBeGreaterThan(0);
  });
});

describe('at the top of a ladder', { timeout: 300_000 }, () => {
  it('says so, for as long as it stays there', () => {
    fc.assert(
      fc.property(anyLifePlan(), ({ programs }) => {
        const program = programs.find(({ kind, blocks }) => kind !== 'test' && blocks.length === 1);
        const block = program?.blocks[0];
        if (!program || !block) return;
        // One or two steps are as good as fifty here.
        const until = Math.min(60, block.reps + 2);
        const ladder = { ...base, rungs: [{ raise: 'reps' as const, by: 1, until }] };
        const short: Program = {
          ...program,
          blocks: [{ ...block, addedWeight: 0, ladder: block.reps === 60 ? undefined : ladder }],
        };
        const last = cleanDrills(short, 9).slice(-2);
        for (const { reasons } of last) expect(reasons.map(({ rule }) => rule)).toContain('top');
      }),
      { seed: 1201, numRuns: 2000 },
    );
  });

  it('names the program that follows', () => {
    const starter = builtInPrograms.find(({ title }) => title === 'Club starter')!;
    const top = cleanDrills(starter, 60)
      .at(-1)!
      .reasons.find(({ rule }) => rule === 'top');
    expect(top?.change).toMatch(/^Short holds: this is the top of its ladder. If it stays easy, go on with /);
  });

  it('says that an archer who begins at the top is there, after as many clean days as a step would take and not before', () => {
    const program = trialProgram({ ladder: { rungs: [{ raise: 'hold', by: 5, until: 45 }] } });
    let records: DrillRecord[] = [];
    const isTop = [0, 1, 2, 3].map((at) => {
      const archer = { longestHoldSeconds: 180 };
      const given = prescribe({ program, records, today: dayOfNumber(20_000 + 2 * at), archer });
      records = [...records, { ...drillOf(program, given, clean, at), effort: 0 }];
      expect(askedBy(given).holdMs).toBe(45_000);
      return given.reasons.some(({ rule }) => rule === 'top');
    });
    expect(isTop).toEqual([false, false, true, true]);
  });

  it('is not said while the last step is weight that has not come yet', () => {
    // Given a file whose one step is 4 lb, which come as 2 and 2, a fortnight apart,
    const program = trialProgram({ ladder: { rungs: [{ raise: 'addedWeight', by: 4, until: 4 }] } });
    let records: DrillRecord[] = [];
    const drills = Array.from({ length: 30 }, (_, at) => {
      const given = prescribe({ program, records, today: dayOfNumber(20_000 + 2 * at) });
      records = [...records, drillOf(program, given, clean, at)];
      return { lbf: askedBy(given).weightLbf, isTop: given.reasons.some(({ rule }) => rule === 'top') };
    });
    // then it is the top with 4 lb, and not before.
    for (const { lbf, isTop } of drills) expect(isTop).toBe(lbf === 4);
    expect(drills.at(-1)!.lbf).toBe(4);
  });

  it('is reached and said in few minutes too, where only more reps lead on', () => {
    // Given the power program in six minutes, of which the last steps are more reps and sets; and a ladder of reps alone in four,
    const power = builtInPrograms.find(({ title }) => title === 'Power')!;
    const byReps = trialProgram({ sets: 1, ladder: { rungs: [{ raise: 'reps', by: 1, until: 12 }] } });
    for (const [program, minutes] of [
      [power, 6],
      [byReps, 4],
    ] as const) {
      const drills = cleanDrills(program, 90, minutes);
      for (const { reasons, durationMs } of drills) {
        const { needDays, level, top } = reasons.find(({ facts }) => 'level' in facts)!.facts as LadderFacts;
        // then each morning says what leads on, until it is the top;
        expect(needDays !== undefined || level === top).toBe(true);
        expect(durationMs).toBeLessThanOrEqual(minutes * 60_000);
      }
      expect(drills.at(-1)!.reasons.map(({ rule }) => rule)).toContain('top');
    }
  });

  it('is not said of an archer who failed there, until it is clean again', () => {
    const program = trialProgram({ ladder: { rungs: [{ raise: 'hold', by: 5, until: 45 }] } });
    let records: DrillRecord[] = [];
    const on = (day: number) =>
      prescribe({ program, records, today: dayOfNumber(20_000 + day), archer: { longestHoldSeconds: 180 } });
    const drill = (day: number, manner: 'clean' | 'all short') => {
      records = [...records, drillOf(program, on(day), { manner, saysWhy: false }, day)];
      return on(day + 2).reasons.some(({ rule }) => rule === 'top');
    };
    expect([drill(0, 'clean'), drill(2, 'clean'), drill(4, 'all short')]).toEqual([false, true, false]);
  });

  it('is reached in no other life without a word', () => {
    fc.assert(
      fc.property(anyLifePlan(), (plan) => {
        for (const { given } of live(plan).days) {
          for (const { facts } of given.reasons) {
            if ('needDays' in facts) expect(facts.needDays).toBeGreaterThan(0);
          }
        }
      }),
      { seed: 1202, numRuns: 2000 },
    );
  });
});

const base = { climbAfter: { cleanSessions: 2, effortAtMost: 7 }, stepDownAfter: { missedShare: 0.2, sessions: 1 } };

describe('clean work, in numbers', () => {
  it('three tenths of the foot lead on, and less holds the place', () => {
    const program = trialProgram({ sets: 1, reps: 10, hold: 10, rest: { seconds: 20 } });
    const full = prescribe({ program, records: [], today: dayOfNumber(20_000) }).blocks[0]!;
    const holdAfter = (reps: number) => {
      const records = [0, 2].map((day) =>
        drillOf(program, { blocks: [{ ...full, reps }], date: dayOfNumber(20_000 + day) }, clean, day),
      );
      return prescribe({ program, records, today: dayOfNumber(20_004) }).blocks[0]!.holdMs;
    };
    // 30 s of 100 s climb from 10 s to 15 s after two clean drills; 20 s do not.
    expect([2, 3].map(holdAfter)).toEqual([10_000, 15_000]);
  });

  it('a day that leads no further says so: too little of it is left, or a shorter hold, a lighter week of the file, the way back after pain', () => {
    const lighter = (keepRatio: number) =>
      ({ rule: 'lighterWeek', keepRatio, block: 'Base', week: 3, ofWeeks: 4 }) as const;
    const told = (more: object, change: object = {}) => {
      const program = trialProgram({ sets: 1, reps: 10, hold: 10, rest: { seconds: 20 }, ...change });
      const full = prescribe({ program, records: [], today: dayOfNumber(20_000) });
      const records = [drillOf(program, full, clean, 0)];
      return prescribe({ program, records, today: dayOfNumber(20_007), ...more }).reasons.some(
        ({ rule, block }) => rule === 'holdsPlace' && block === 0,
      );
    };
    // Three of ten reps are enough, two are not: 30 s of 100 s lead on.
    expect([0.3, 0.2].map((keep) => told({ lighter: lighter(keep) }))).toEqual([false, true]);
    const deload = { everyWeeks: 2, keep: 0.9 };
    expect(told({}, { ladder: { ...trialProgram().blocks[0]!.ladder, deload } })).toBe(true);
    const days = [20_001, 20_002, 20_003].map((day) => ({ date: dayOfNumber(day), pain: day === 20_001 }));
    expect(told({ days })).toBe(true);
    expect(told({ today: dayOfNumber(20_030) })).toBe(true); // days away shorten the hold
    expect(told({})).toBe(false);
  });

  it('a file whose foot is longer than that grows to a fifth more than its foot', () => {
    // 60 holds of 20 s with 46 s each are 45.7 minutes; its ladder goes on to holds of 60 s.
    const ladder = { rungs: [{ raise: 'hold', by: 5, until: 60 }] };
    const program = trialProgram({ sets: 1, reps: 60, hold: 20, rest: { seconds: 20 }, ladder });
    const longest = Math.max(...cleanDrills(program, 12).map(({ durationMs }) => durationMs));
    expect(longest).toBeLessThanOrEqual(1.2 * 45.8 * 60_000);
    expect(longest).toBeGreaterThan(1.15 * 45.7 * 60_000);
  });

  it('from drill to drill the time grows by a fifth, though the next place of the ladder is twice as much', () => {
    const ladder = { rungs: [{ raise: 'reps', by: 10, until: 60 }] };
    const program = trialProgram({ sets: 1, reps: 10, hold: 10, rest: { seconds: 5 }, ladder });
    expect(cleanDrills(program, 5).map(({ blocks }) => blocks[0]!.reps)).toEqual([10, 10, 12, 14, 16]);
  });

  it('after mornings of one hold the whole drill comes back in steps, up to where the program begins', () => {
    // Given five mornings of two minutes, one hold of 30 s each, of a program that begins with 2 x 10 of them,
    let records: DrillRecord[] = [];
    const seconds = Array.from({ length: 14 }, (_, at) => {
      const minutes = at < 5 ? 2 : undefined;
      const given = prescribe({ program: holding, records, today: dayOfNumber(20_000 + 2 * at), minutes });
      records = [...records, { ...drillOf(holding, given, clean, at), effort: 0 }];
      return askedBy(given).totalMs / 1000;
    });
    // then with half an hour again it is no more than three times what was done so far, and not 600 s at once.
    expect(Math.max(...seconds.slice(0, 5))).toBeLessThanOrEqual(45);
    for (const [at, one] of seconds.entries()) if (at >= 5) expect(one).toBeLessThanOrEqual(3 * seconds[at - 1]!);
    expect(Math.max(...seconds)).toBeGreaterThanOrEqual(480);
  });

  it('on the third day on which the minutes cut the reps, more reps are no longer in the way of a longer hold', () => {
    // Given a ladder of 10, 12 ... 20 reps and then longer holds, one whole drill, and four minutes from then on, which leave seven reps,
    const rungs = [
      { raise: 'reps', by: 2, until: 20 },
      { raise: 'hold', by: 5, until: 30 },
    ];
    const program = trialProgram({ sets: 1, reps: 10, hold: 10, rest: { seconds: 20 }, ladder: { rungs } });
    let records: DrillRecord[] = [];
    const holds = [undefined, 4, 4, 4, 4].map((minutes, at) => {
      const given = prescribe({ program, records, today: dayOfNumber(20_000 + 2 * at), minutes });
      records = [...records, { ...drillOf(program, given, clean, at), effort: 0 }];
      return given.blocks[0]!.holdMs / 1000;
    });
    // then two clean days lead to 12 reps, of which nothing is seen, and two more to 15 s.
    expect(holds).toEqual([10, 10, 10, 10, 15]);
  });

  it('without minutes a drill grows to half an hour', () => {
    // Given a file that begins with 20 holds of 10 s, 36 s each with all that belongs to it, and goes on to 60: 36 minutes,
    const ladder = { rungs: [{ raise: 'reps', by: 10, until: 60 }] };
    const program = trialProgram({ sets: 1, reps: 20, hold: 10, rest: { seconds: 20 }, ladder });
    const longest = Math.max(...cleanDrills(program, 30).map(({ durationMs }) => durationMs));
    expect(longest).toBeLessThanOrEqual(30 * 60_000);
    expect(longest).toBeGreaterThan(29 * 60_000);
  });
});
