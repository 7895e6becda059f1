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
