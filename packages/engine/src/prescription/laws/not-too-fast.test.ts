import { prescribe } from '@larkhold/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLifePlan, askedBy, drillOf, live } from '../../../../../tests/fixtures/prescription/any-life.ts';
import type { DrillRecord } from '../../journal/drill-record.ts';
import { builtInPrograms } from '../../program/built-in-programs.ts';
import { dayNumber, dayOfNumber } from '../../units/calendar-day.ts';

// Law: a day counts once; added weight 2 lb a step, none in the first fourteen days, two weeks apart; never more than six days in a row.
// Six in a row: bow-international.com, "Ask the experts 6".

const holding = builtInPrograms.find(({ title }) => title === 'Holding')!;
const clean = { manner: 'clean', saysWhy: false } as const;

describe('not too fast', { timeout: 300_000 }, () => {
  it('no seventh day in a row, no weight in the first fourteen days, 2 lb a step and two weeks apart', () => {
    fc.assert(
      fc.property(anyLifePlan(), (plan) => {
        const events = plan.events.map((one) => ({ ...one, gapDays: Math.min(one.gapDays, 5) }));
        const life = live({ ...plan, saysWeight: true, events: [...events, ...events] });
        const rises: number[] = [];
        let most = 0;
        for (const { day, given, records, entries, record, program } of life.days) {
          const inHand = new Set([
            ...records.filter(({ reps }) => reps.length > 0).map(({ date }) => dayNumber(date)),
            ...entries
              .filter(({ arrows }) => arrows?.some(({ count }) => count > 0))
              .map(({ date }) => dayNumber(date)),
          ]);
          if ([1, 2, 3, 4, 5, 6].every((back) => inHand.has(day - back))) expect(given.rest).toBeDefined();
          if (program.kind === 'test') continue;
          const { weightLbf } = askedBy(given);
          const firstDay = Math.min(...[...inHand].filter((one) => one < day), day);
          if (day - firstDay < 14) expect(weightLbf).toBe(0);
          if (weightLbf > most) {
            expect(weightLbf - most).toBeLessThanOrEqual(2 + 1e-9);
            for (const rise of rises) expect(day - rise).toBeGreaterThanOrEqual(14);
            if (record) {
              rises.push(day);
              most = weightLbf;
            }
          }
        }
      }),
      { seed: 701, numRuns: 2000 },
    );
  });

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
