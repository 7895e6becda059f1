import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  anyDay,
  anyLifePlan,
  askedBy,
  drillOf,
  isOf,
  live,
} from '../../../../../tests/fixtures/prescription/any-life.ts';
import type { DrillRecord } from '../../journal/drill-record.ts';
import { builtInPrograms } from '../../program/built-in-programs.ts';
import type { Program } from '../../program/program.ts';
import { layOut } from '../../timeline/lay-out.ts';
import { dayNumber, dayOfNumber } from '../../units/calendar-day.ts';
import { prescribe } from '../prescribe.ts';
import { trialProgram } from '../trial-history.ts';

// The laws that a coach would hold anybody's numbers to. What happened is read from the records; the rules are not asked.

const holding = builtInPrograms.find(({ title }) => title === 'Holding')!;
const others = builtInPrograms.filter(({ kind, title }) => kind !== 'test' && title !== 'Holding');
const clean = { manner: 'clean', saysWhy: false } as const;

describe('pain leads', { timeout: 300_000 }, () => {
  it('no block on a day with pain, whatever the program; rest until two answers on different days', () => {
    fc.assert(
      fc.property(anyLifePlan(), (plan) => {
        const life = live(plan);
        for (const lived of life.days) {
          const date = dayOfNumber(lived.day);
          const painful = [...lived.records, ...lived.entries].filter((one) => one.pain && one.date <= date);
          if (painful.length === 0) continue;
          const last = painful
            .map((one) => one.date)
            .sort()
            .at(-1)!;
          const answers = new Set(
            [...lived.records, ...lived.entries]
              .filter((one) => one.pain === false && one.date > last && one.date <= date)
              .map((one) => one.date),
          );
          if (last === date) expect(lived.given.blocks).toEqual([]);
          if (answers.size < 2) expect(lived.given.rest).toBeDefined();
          if (answers.size < 4) expect(['band', 'strap']).toContain(lived.given.tool);
        }
      }),
      { seed: 301, numRuns: 2000 },
    );
  });

  it('then leads up in steps: nothing grows by more than a fifth, or a second and a rep, over what was done since', () => {
    const after = fc.array(
      anyDay.map((event) => ({
        ...event,
        gapDays: Math.max(1, Math.min(event.gapDays, 3)),
        drillPain: false,
        diaryPain: false,
      })),
      { minLength: 8, maxLength: 14 },
    );
    fc.assert(
      fc.property(anyLifePlan(), after, (plan, later) => {
        const hurt = { gapDays: 1, program: 0, manner: 'no drill' as const, diaryPain: true, saysWhy: false };
        const life = live({ ...plan, events: [...plan.events.slice(0, 5), hurt, ...later] });
        const hurtDay = life.days[Math.min(5, plan.events.length)]!.day;
        for (const { day, program, records, given } of life.days) {
          const since = records.filter(
            ({ date, reps }) => dayNumber(date) > hurtDay && reps.some(({ heldMs }) => heldMs > 0),
          );
          const isBegun = since.some((record) => isOf(program, record));
          if (!isBegun || program.kind === 'test' || day - dayNumber(since[0]!.date) > 28) continue;
          const mostOf = (of: (reps: DrillRecord['reps']) => number) => Math.max(...since.map(({ reps }) => of(reps)));
          const doneHoldMs = mostOf((reps) => Math.max(...reps.map(({ heldMs }) => heldMs)));
          const doneMs = mostOf((reps) => reps.reduce((sum, { heldMs }) => sum + heldMs, 0));
          const { holdMs, totalMs, weightLbf } = askedBy(given);
          expect(holdMs).toBeLessThanOrEqual(Math.max(1.2 * doneHoldMs, doneHoldMs + 1000));
          expect(totalMs).toBeLessThanOrEqual(Math.max(1.2 * doneMs, doneMs + holdMs) + 1e-6);
          if (plan.saysWeight)
            expect(weightLbf).toBeLessThanOrEqual(
              mostOf((reps) => Math.max(...reps.map(({ addedWeightLbf }) => addedWeightLbf ?? 0))),
            );
        }
      }),
      { seed: 302, numRuns: 2000 },
    );
  });

  it('a fortnight after pain the climb is through, and nobody who was not on it begins at the top', () => {
    // Given ten clean drills, every other day, of ten holds of 30 s, and pain on a day after them,
    const program = trialProgram({ sets: 1, reps: 10, ladder: undefined });
    const blocks = prescribe({ program, records: [], today: dayOfNumber(20_000) }).blocks;
    const before = Array.from({ length: 10 }, (_, at) =>
      drillOf(program, { blocks, date: dayOfNumber(20_000 + 2 * at) }, clean, at),
    );
    const diary = (day: number, pain: boolean) => ({ date: dayOfNumber(day), pain });
    const answers = Array.from({ length: 20 }, (_, at) => diary(20_020 + at, at === 0));
    // when no drill is done on the way, then the first one with the own bow is as short as one with the band: 0.3 of the time, in hold and reps;
    const on = (day: number, records: DrillRecord[]) =>
      prescribe({
        program,
        records,
        days: answers.filter(({ date }) => date < dayOfNumber(day)),
        today: dayOfNumber(day),
      });
    const late = on(20_029, before);
    expect(late.tool).toBe('bow');
    expect(askedBy(late).holdMs).toBeLessThanOrEqual(16_500); // 30 s x the root of 0.3
    expect(late.reasons.map(({ rule }) => rule)).toContain('afterPain');
    // and when every second day is drilled from the band on, then it goes up from drill to drill, to what was done before.
    let records = before;
    const totals: number[] = [];
    for (let day = 20_023; day <= 20_049; day += 2) {
      const given = on(day, records);
      totals.push(askedBy(given).totalMs / 1000);
      records = [...records, drillOf(program, given, clean, day)];
    }
    for (const [at, total] of totals.entries()) if (at > 0) expect(total).toBeGreaterThanOrEqual(totals[at - 1]!);
    expect(totals[0]).toBeLessThanOrEqual(90);
    expect(totals.at(-1)).toBe(300);
  });

  it('what was held since pain counts for every program: another one does not begin with more than a step above it', () => {
    // Given two programs of ten holds of 30 s, pain, four answers of "no", and one drill with the band of three holds of 5 s in the first one,
    const [one, other] = ['One', 'Other'].map((title) =>
      trialProgram({ sets: 1, reps: 10, ladder: undefined }, { title }),
    ) as [Program, Program];
    const [block] = prescribe({ program: one, records: [], today: dayOfNumber(20_000) }).blocks;
    const drill = (program: Program, day: number, more: object) =>
      drillOf(program, { blocks: [{ ...block!, ...more }], date: dayOfNumber(day) }, clean, day);
    const days = Array.from({ length: 5 }, (_, at) => ({ date: dayOfNumber(20_010 + at), pain: at === 0 }));
    const records = [drill(one, 20_006, {}), drill(other, 20_008, {}), drill(one, 20_013, { holdMs: 5000, reps: 3 })];
    // then the other one asks for 6 s at the most, a second more, and for 18 s in all, not for what it would begin with at the band.
    const { holdMs, totalMs } = askedBy(prescribe({ program: other, records, days, today: dayOfNumber(20_015) }));
    expect(holdMs).toBe(6000);
    expect(totalMs).toBeLessThanOrEqual(21_000);
  });

  it('the climb is over after four weeks and ten days with a drill, and not before', () => {
    // Given ten holds of 30 s before pain, eight days answered with "no", and after them now and then one hold of 5 s,
    const program = trialProgram({ sets: 1, reps: 10, ladder: undefined });
    const [block] = prescribe({ program, records: [], today: dayOfNumber(20_000) }).blocks;
    const drill = (day: number, more: object) =>
      drillOf(program, { blocks: [{ ...block!, ...more }], date: dayOfNumber(day) }, clean, day);
    const days = Array.from({ length: 9 }, (_, at) => ({ date: dayOfNumber(20_010 + at), pain: at === 0 }));
    const holdAfter = (count: number, apart = 3) => {
      const since = Array.from({ length: count }, (_, at) => drill(20_020 + apart * at, { holdMs: 5000, reps: 1 }));
      const records = [drill(20_006, {}), drill(20_008, {}), ...since];
      return askedBy(prescribe({ program, records, days, today: dayOfNumber(20_022 + apart * (count - 1)) })).holdMs;
    };
    // then a fifth or a second above them, 6 s, is the most after ten of them; after the eleventh, thirty days on, it is not.
    expect(holdAfter(10)).toBe(6000);
    expect(holdAfter(11)).toBeGreaterThan(6000);
    // Six of them in five weeks are not ten.
    expect(holdAfter(6, 7)).toBe(6000);
  });

  it('nothing jumps when the climb is over: after weeks of two minutes a drill, half an hour comes back in steps', () => {
    // Given the holding program, pain, four days answered with "no", and from then on two minutes every third day: one hold a drill,
    const hurtDay = 20_020;
    const days = Array.from({ length: 9 }, (_, at) => ({ date: dayOfNumber(hurtDay + at), pain: at === 0 }));
    let records: DrillRecord[] = [];
    const totals: number[] = [];
    for (let day = 20_000; day < hurtDay + 100; day += 3) {
      const minutes = day > hurtDay && day < hurtDay + 42 ? 2 : undefined;
      const known = days.filter(({ date }) => date <= dayOfNumber(day));
      const given = prescribe({ program: holding, records, days: known, today: dayOfNumber(day), minutes });
      if (given.rest) continue;
      records = [...records, drillOf(holding, given, clean, day)];
      if (day >= hurtDay + 39) totals.push(askedBy(given).totalMs / 1000);
    }
    // then, when there is half an hour again, the time at full draw is doubled in no drill (it was 45 s, and then 540 s), and comes back all the same.
    for (const [at, total] of totals.entries()) if (at > 0) expect(total).toBeLessThanOrEqual(2 * totals[at - 1]!);
    expect(totals[0]).toBeLessThanOrEqual(45);
    expect(Math.max(...totals)).toBeGreaterThanOrEqual(500);
  });

  it('light bow and own bow leave their shares and no weight, also of whoever does more with the band than was asked', () => {
    // Given a coach's file of ten holds of 30 s with 4 lb, drilled so before pain, which leaves 8 x 25 s to work with (0.7 of the time),
    const program = trialProgram({ sets: 1, reps: 10, addedWeight: 4, ladder: undefined }, { author: 'A coach' });
    const [block] = prescribe({ program, records: [], today: dayOfNumber(20_000) }).blocks;
    const drill = (day: number) =>
      drillOf(program, { blocks: [{ ...block!, addedWeightLbf: 4 }], date: dayOfNumber(day) }, clean, day);
    const days = Array.from({ length: 7 }, (_, at) => ({ date: dayOfNumber(20_020 + at), pain: at === 0 }));
    // and all of it done with the band as well, so that the climb after pain is in nobody's way,
    const records = [...Array.from({ length: 10 }, (_, at) => drill(20_000 + 2 * at)), drill(20_023)];
    const on = (day: number) => {
      const known = days.filter(({ date }) => date < dayOfNumber(day));
      const { blocks } = prescribe({ program, records, days: known, today: dayOfNumber(day) });
      return blocks.map(({ reps, holdMs, addedWeightLbf }) => [reps, holdMs, addedWeightLbf]);
    };
    // then it is 0.45 of the time with the light bow, 0.65 with the own one: each of hold and reps by the root.
    expect(on(20_025)).toEqual([[5, 16_500, 0]]);
    expect(on(20_027)).toEqual([[6, 20_000, 0]]);
  });

  it('a stage whose tool is not in the kit is done on rest days', () => {
    const hurt = { date: '2026-11-01', pain: true };
    const days = [hurt, { date: '2026-11-02', pain: false }, { date: '2026-11-03', pain: false }];
    const rest = (tools: readonly ('bow' | 'band')[]) =>
      prescribe({ program: holding, records: [], days, today: '2026-11-04', archer: { tools } }).rest?.rule;
    expect(rest(['bow'])).toBe('painTool');
    expect(rest(['bow', 'band'])).toBeUndefined();
  });

  it('comes back by rest, band, light bow and own bow, two answers each', () => {
    // Given clean drills with the own bow, and one that hurt on 1 November,
    const before = ['2026-10-26', '2026-10-28', '2026-10-30'].map((date, at) =>
      drillOf(holding, { ...prescribe({ program: holding, records: [], today: date }), date }, clean, at),
    );
    const hurt = { ...before[0]!, id: 'hurt', date: '2026-11-01', startedAt: '2026-11-01T06:30:00Z', pain: true };
    const records: DrillRecord[] = [...before, hurt];
    const seen: string[] = [];
    // when every day after it is answered with "no",
    for (let day = 2; day <= 10; day++) {
      const today = `2026-11-${String(day).padStart(2, '0')}`;
      const days = Array.from({ length: day - 2 }, (_, at) => ({
        date: `2026-11-${String(at + 2).padStart(2, '0')}`,
        pain: false,
      }));
      const given = prescribe({ program: holding, records, days, today });
      seen.push(given.rest ? `rest, ${given.tool}` : given.tool!);
      // then hold, time and weight stay below those of the days before,
      if (day < 10) expect(askedBy(given).holdMs).toBeLessThan(30_000);
    }
    // and the tool goes band, light bow, own bow.
    expect(seen).toEqual(['rest, band', 'rest, band', 'band', 'band', 'light-bow', 'light-bow', 'bow', 'bow', 'bow']);
    expect(layOut(prescribe({ program: holding, records, today: '2026-11-01' }))).toEqual({
      steps: [],
      cues: [],
      durationMs: 0,
    });
  });

  it('is known to every other program, and a third painful drill in two weeks ends drilling', () => {
    const painful = (date: string) => ({
      ...drillOf(holding, { ...prescribe({ program: holding, records: [], today: date }), date }, clean, 1),
      id: date,
      pain: true,
    });
    const records = ['2026-11-02', '2026-11-05', '2026-11-09'].map(painful);
    for (const program of others) {
      expect(prescribe({ program, records: records.slice(0, 1), today: '2026-11-03' }).rest).toBeDefined();
      const given = prescribe({ program, records, today: '2026-11-12' });
      expect(given.rest?.rule).toBe('painAgain');
      expect(given.blocks).toEqual([]);
    }
  });
});
