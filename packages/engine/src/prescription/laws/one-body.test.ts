import { prescribe } from '@larkhold/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  anyLifePlan,
  askedBy,
  drillOf,
  inputOf,
  isOf,
  live,
} from '../../../../../tests/fixtures/prescription/any-life.ts';
import { builtInPrograms } from '../../program/built-in-programs.ts';
import { dayNumber, dayOfNumber } from '../../units/calendar-day.ts';
import { trialProgram } from '../trial-history.ts';

// Law: pain, effort, days away, arrows, weight and rest days are read over all programs; another program is no layoff.

const starter = builtInPrograms.find(({ title }) => title === 'Club starter')!;
const holding = builtInPrograms.find(({ title }) => title === 'Holding')!;

describe('one body', { timeout: 300_000 }, () => {
  it('counts days away from the last draw, whatever was drawn', () => {
    fc.assert(
      fc.property(anyLifePlan(), (plan) => {
        for (const { given, day, records, entries } of live(plan).days) {
          const away = given.reasons.find(({ rule }) => rule === 'away');
          if (!away) continue;
          const drawn = [
            ...records.filter(({ reps }) => reps.some(({ heldMs, outcome }) => heldMs > 0 || outcome !== 'skipped')),
            ...entries.filter(({ arrows }) => arrows?.some(({ count }) => count > 0)),
          ].map(({ date }) => dayNumber(date));
          expect(away.facts).toMatchObject({ days: day - Math.max(...drawn.filter((one) => one <= day)) });
        }
      }),
      { seed: 201, numRuns: 2000 },
    );
  });

  it('asks for no more after a hard drill of another program than after an easy one', () => {
    fc.assert(
      fc.property(anyLifePlan(), (plan) => {
        const life = live(plan);
        for (const lived of life.days) {
          const last = lived.records.at(-1);
          if (!last || isOf(lived.program, last) || last.kind === 'test' || lived.program.kind === 'test') continue;
          const withEffort = (effort: number) => {
            const records = [...lived.records.slice(0, -1), { ...last, effort }];
            return askedBy(prescribe({ ...inputOf(life, lived), records }));
          };
          const [easy, hard] = [withEffort(3), withEffort(10)];
          expect(hard.totalMs).toBeLessThanOrEqual(easy.totalMs);
          expect(hard.holdMs).toBeLessThanOrEqual(easy.holdMs);
        }
      }),
      { seed: 202, numRuns: 2000 },
    );
  });

  it('a month of another program is no month away, and its hard day is felt', () => {
    // Given a clean month of the holding program, a month of the club starter,
    let records: ReturnType<typeof drillOf>[] = [];
    for (let at = 0; at < 28; at++) {
      const program = at < 14 ? holding : starter;
      const given = prescribe({ program, records, today: dayOfNumber(20_000 + 2 * at) });
      const manner = at === 27 ? 'hard' : 'clean';
      records = [...records, drillOf(program, given, { manner, saysWhy: false }, at)];
    }
    // when the holding program comes back two days later, then nothing says days away, and the hard day does.
    const { reasons } = prescribe({ program: holding, records, today: dayOfNumber(20_056) });
    expect(reasons.some(({ rule }) => rule === 'away')).toBe(false);
    expect(reasons.some(({ rule }) => rule === 'effort')).toBe(true);
  });
});

describe('one body, in numbers', () => {
  const program = trialProgram({ sets: 1, reps: 10, hold: 10, rest: { seconds: 30 }, ladder: undefined });
  const full = prescribe({ program, records: [], today: dayOfNumber(20_000) });
  const own = (day: number) =>
    drillOf(program, { ...full, date: dayOfNumber(day) }, { manner: 'clean', saysWhy: false }, day);
  const other = (day: number, more: object) => ({ ...own(day), id: `other ${day}`, program: 'Another', ...more });
  const reps = (
    records: ReturnType<typeof own>[],
    days: { date: string; arrows: { kind: 'practice'; count: number }[] }[] = [],
  ) => prescribe({ program, records, days, today: dayOfNumber(20_010) }).blocks[0]!.reps;
  const shot = (day: number, count: number) => [
    { date: dayOfNumber(day), arrows: [{ kind: 'practice' as const, count }] },
  ];

  it('an effort of nine in another program leaves eight of ten reps of the next drill, and of that one alone', () => {
    expect(reps([own(20_006), other(20_008, { effort: 9 })])).toBe(8);
    expect(reps([own(20_006), other(20_008, { effort: 8 })])).toBe(10);
    expect(reps([other(20_006, { effort: 9 }), { ...own(20_008), effort: undefined }])).toBe(10);
  });

  it('an effort of nine is said where nothing is left to take: of one rep, after one that was let down', () => {
    const inOneMinute = (records: ReturnType<typeof own>[]) =>
      prescribe({ program, records, today: dayOfNumber(20_010), minutes: 1 });
    const { blocks } = inOneMinute([]);
    expect(blocks[0]!.reps).toBe(1);
    const failed = drillOf(program, { blocks, date: dayOfNumber(20_006) }, { manner: 'all short', saysWhy: false }, 0);
    const { reasons } = inOneMinute([failed, other(20_008, { effort: 9 })]);
    expect(reasons.map(({ rule }) => rule)).toContain('effort');
  });

  it('140 arrows yesterday leave eight of ten reps, 139 leave all', () => {
    expect([139, 140].map((count) => reps([own(20_008)], shot(20_009, count)))).toEqual([10, 8]);
  });

  it('a program that was left for eight weeks is worth what was held in others since, and not what its own file saw last', () => {
    // Given four drills of a program of 10 s, and then 50 s in another one, up to a day,
    const ladder = { rungs: [{ raise: 'hold', by: 5, until: 60 }] };
    const left = trialProgram({ sets: 1, reps: 10, hold: 10, rest: { timesHold: 2 }, ladder }, { title: 'Left' });
    const [block] = prescribe({ program: left, records: [], today: dayOfNumber(20_000) }).blocks;
    const drill = (title: string, day: number, holdMs: number, manner: 'clean' | 'all short' = 'clean') =>
      drillOf(
        { ...left, title },
        { blocks: [{ ...block!, holdMs }], date: dayOfNumber(day), tool: 'bow' },
        { manner, saysWhy: false },
        day,
      );
    const own = [0, 2, 4, 6].map((day) => drill('Left', 20_000 + day, 10_000));
    const hold = (untilDay: number, records = own) => {
      const others = [];
      for (let day = 20_008; day < untilDay; day += 2) others.push(drill('Other', day, 50_000));
      const given = prescribe({ program: left, records: [...records, ...others], today: dayOfNumber(untilDay) });
      return [given.blocks[0]!.holdMs, given.reasons.some(({ rule }) => rule === 'firstDose')];
    };
    // then it goes on where it was for eight weeks, and after them begins at 50 s;
    expect(hold(20_061)).toEqual([10_000, false]);
    expect(hold(20_062)).toEqual([50_000, true]);
    // where its first drill, of 40 s, failed, it goes on below.
    const failed = drill('Left', 20_006, 40_000, 'all short');
    expect(hold(20_062, [failed])[0]).toBeLessThan(40_000);
  });

  it('arrows are no days away', () => {
    const shots = [19_985, 19_990, 19_995, 20_000, 20_005].flatMap((day) => shot(day, 30));
    expect(reps([own(19_980)], shots)).toBe(10);
    expect(reps([own(19_980)])).toBeLessThan(10);
  });

  it('a hold that another program failed is not asked for: seven tenths of ten seconds are left on a first bad day', () => {
    const failed = other(20_008, {}).reps.map((rep) => ({ ...rep, heldMs: 5000, outcome: 'short' as const }));
    const { blocks } = prescribe({
      program,
      records: [own(20_006), other(20_008, { reps: failed })],
      today: dayOfNumber(20_010),
    });
    expect(blocks[0]!.holdMs).toBe(7000);
  });
});
