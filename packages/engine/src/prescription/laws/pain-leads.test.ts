import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLifePlan, askedBy, drillOf, live } from '../../../../../tests/fixtures/prescription/any-life.ts';
import type { DrillRecord } from '../../journal/drill-record.ts';
import { builtInPrograms } from '../../program/built-in-programs.ts';
import { layOut } from '../../timeline/lay-out.ts';
import { dayOfNumber } from '../../units/calendar-day.ts';
import { prescribe } from '../prescribe.ts';

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

describe('not too fast', { timeout: 300_000 }, () => {
  it('counts a day once: three clean drills a day climb no faster than one', () => {
    const holdAfter = (aDay: number) => {
      let records: DrillRecord[] = [];
      for (let day = 0; day < 6; day += 2) {
        for (let drill = 0; drill < aDay; drill++) {
          const given = prescribe({ program: holding, records, today: dayOfNumber(20_000 + day) });
          records = [...records, drillOf(holding, given, clean, 3 * day + drill)];
        }
      }
      return askedBy(prescribe({ program: holding, records, today: dayOfNumber(20_006) })).holdMs;
    };
    expect(holdAfter(3)).toBe(holdAfter(1));
  });
});

describe('the first dose fits', () => {
  it('18, 38 and 90 s begin at 7.5, 16 and more than 30 s', () => {
    const holdOf = (longestHoldSeconds: number) =>
      askedBy(prescribe({ program: holding, records: [], today: '2026-11-25', archer: { longestHoldSeconds } }))
        .holdMs / 1000;
    expect([18, 38].map(holdOf)).toEqual([7.5, 16]);
    expect(holdOf(90)).toBeGreaterThan(30);
  });
});

describe('clean work leads on', () => {
  it('in twenty minutes every other morning, within twenty minutes', () => {
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

describe('nobody is left to fail', () => {
  it('an archer of 18 s fails a few drills of a year, not all', () => {
    let records: DrillRecord[] = [];
    let failed = 0;
    for (let at = 0; at < 156; at++) {
      const given = prescribe({ program: holding, records, today: dayOfNumber(20_000 + Math.floor((7 * at) / 3)) });
      const isFailing = askedBy(given).holdMs > 18_000;
      if (isFailing) failed += 1;
      records = [
        ...records,
        drillOf(holding, given, { manner: isFailing ? 'all short' : 'clean', saysWhy: false }, at),
      ];
    }
    expect(failed).toBeLessThan(40); // of 156; ours, no source
  });
});
