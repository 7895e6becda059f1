import { builtInPrograms, type DrillRecord, planWeeks, prescribe, programSchema } from '@larkhold/engine';
import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';

/** Published rules of progression beside what the engine and the built-in programs do. Weeks come from luxon. */

const today = '2026-11-25';
const laddered = builtInPrograms.flatMap(({ title, blocks }) =>
  blocks.flatMap((block) => (block.ladder ? [{ title, block, ladder: block.ladder }] : [])),
);

function recordOn(date: string, repCount: number, holdMs: number): DrillRecord {
  const reps = Array.from({ length: repCount }, (_, rep) => ({
    ...{
      block: 0,
      set: 0,
      rep,
      hand: 'usual' as const,
      prescribedMs: holdMs,
      heldMs: holdMs,
      outcome: 'held' as const,
    },
  }));
  const startedAt = `${date}T06:30:00Z`;
  return { id: date, program: 'Growth', date, startedAt, endedAt: startedAt, reps, prescribedReps: repCount };
}

describe('raising the load', () => {
  // ACSM position stand, Ratamess et al. 2009, Med Sci Sports Exerc 41(3):687: raise the load by 2-10 %.
  it('adds 2 to 10 % of a bow of 30 lb, the lightest that a holding program with weight is for (30 lb: common practice, no source)', () => {
    const steps = laddered.flatMap(({ ladder }) => ladder.rungs.filter(({ raise }) => raise === 'addedWeight'));
    expect(steps.length).toBeGreaterThan(0);
    for (const { by } of steps) expect(by / 30 >= 0.02 && by / 30 <= 0.1).toBe(true);
  });

  // 2-for-2: over the goal in two sessions running, then raise. Baechle & Earle (NSCA), Essentials of Strength Training.
  it('waits for two good sessions running where a file says nothing else', () => {
    const { climbAfter } = programSchema.shape.blocks.element.shape.ladder.unwrap().parse({
      rungs: [{ raise: 'hold', by: 5, until: 45 }],
    });
    expect(climbAfter.cleanSessions).toBe(2);
  });
});

describe('deload', () => {
  // Less stress mostly by reps and sets: Bell et al. 2023, Sports Med Open 9. Every 4 to 6 weeks: from memory.
  it('comes every 4 to 6 weeks and takes off reps, not hold', () => {
    for (const { ladder } of laddered) {
      if (ladder.deload) expect(ladder.deload.everyWeeks >= 4 && ladder.deload.everyWeeks <= 6).toBe(true);
    }
    const program = builtInPrograms.find(({ blocks }) => blocks[0]!.ladder?.deload)!;
    const rows = planWeeks({ program, records: [], today: '2026-11-23', weeks: 4, daysPerWeek: 3 });
    const first = rows.find(({ kind }) => kind === 'deload')!;
    const before = rows[rows.indexOf(first) - 1]!;
    expect(first.drills[0]!.holdMs).toBeGreaterThanOrEqual(before.drills[0]!.holdMs);
    expect(first.drills[0]!.reps).toBeLessThan(before.drills[0]!.reps);
  });
});

describe('layoff', () => {
  // Two weeks or more is a transition: Caterisano et al. 2019, Strength Cond J 41(3):1. The loss grows with its length: Bosquet et al. 2013,
  // Scand J Med Sci Sports 23:e140.
  it('steps down from two weeks on, and further the longer it was', () => {
    for (const { ladder } of laddered) {
      const steps = ladder.layoff ?? [];
      expect(steps[0]?.days).toBe(14);
      for (const [at, { stepsDown }] of steps.entries())
        expect(stepsDown).toBeGreaterThan(steps[at - 1]?.stepsDown ?? 0);
    }
  });
});

describe('weekly growth', () => {
  const program = programSchema.parse({
    ...{ format: 'larkhold/program', version: 1, title: 'Growth', tool: 'bow' },
    blocks: [
      {
        ...{
          title: 'Holds',
          drill: 'holding',
          sets: 1,
          reps: 60,
          draw: 3,
          hold: 10,
          letDown: 3,
          rest: { seconds: 10 },
        },
        ladder: { rungs: [{ raise: 'hold', by: 5, until: 45 }], weeklyGrowth: 1.1 },
      },
    ],
  });
  const weekAgo = (weeks: number) => DateTime.fromISO(today).minus({ weeks }).toISODate()!;

  // "10 % a week" is a habit: Buist et al. 2008, Am J Sports Med 36:33 found injuries 20.8 % with it, 20.3 % without, p = .90.
  it('allows 1.1 times the mean of the last four training weeks, whatever came before, and says what it is worth', () => {
    // Five sevens of days before these: 60, then 20, 30, 30, 40 reps of 10 s. The mean of the last four is 300 s; 1.1 times is 330 s, 33 reps.
    const records = [60, 20, 30, 30, 40].map((reps, at) => recordOn(weekAgo(5 - at), reps, 10_000));
    const { blocks, reasons } = prescribe({ program, records, today });
    expect(blocks[0]!.reps).toBe(33);
    expect(reasons.find(({ rule }) => rule === 'weeklyGrowth')!.change).toMatch(/not a proven protection: Buist/);
    // 10 reps are done within these seven days: 330 - 100 = 230 s.
    const yesterday = DateTime.fromISO(today).minus({ days: 1 }).toISODate()!;
    const doneThisWeek = recordOn(yesterday, 10, 10_000);
    expect(prescribe({ program, records: [...records, doneThisWeek], today }).blocks[0]!.reps).toBe(23);
  });

  it('does not bind who began in the middle of a week: the first seven days are no week to compare with', () => {
    // 2026-11-20 is a Friday; the week from Monday would be compared with one drill.
    const friday = recordOn('2026-11-20', 20, 10_000);
    expect(
      prescribe({ program, records: [friday], today: '2026-11-23' }).reasons.map(({ rule }) => rule),
    ).not.toContain('weeklyGrowth');
  });
});

describe('taper', () => {
  // From memory: Bosquet et al. 2007, Med Sci Sports Exerc 39:1358, two weeks with 41-60 % less volume, intensity kept. The first, smaller step is ours.
  it('takes off half of the reps in the last week and keeps the hold', () => {
    const program = builtInPrograms.find(({ title }) => title === 'Holding')!;
    const usual = prescribe({ program, records: [], today }).blocks[0]!;
    const inDays = (days: number) => DateTime.fromISO(today).plus({ days }).toISODate()!;
    const last = prescribe({ program, records: [], today, competitionDay: inDays(6) }).blocks[0]!;
    const share = 1 - last.reps / usual.reps;
    expect(share >= 0.41 && share <= 0.6).toBe(true);
    expect(last.holdMs).toBe(usual.holdMs);
    expect(prescribe({ program, records: [], today, competitionDay: inDays(15) }).blocks[0]!.reps).toBe(usual.reps);
  });
});
