import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  anyHistory,
  live,
  type Manner,
  placesOf,
  recordOf,
} from '../../../../tests/fixtures/prescription/any-history.ts';
import { leverRanges } from '../program/program.ts';
import { dayOfNumber, isoWeek } from '../units/calendar-day.ts';
import { prescribe } from './prescribe.ts';

const runs = { seed: 4, numRuns: 200 };

describe('over random programs and histories', () => {
  it('stays within the file, and knows only plain numbers', () => {
    fc.assert(
      fc.property(
        anyHistory,
        fc.option(fc.integer({ min: 1, max: 90 }), { nil: undefined }),
        ([program, days, gap], minutes) => {
          const { records, day } = live(program, days);
          const given = prescribe({ program, records, today: dayOfNumber(day + gap), minutes });
          for (const { sets, reps, holdMs, addedWeightLbf, restMs, setRestMs } of given.blocks) {
            const values = { sets, reps, hold: holdMs / 1000, addedWeight: addedWeightLbf };
            for (const [lever, { least, most }] of Object.entries(leverRanges)) {
              const value = values[lever as keyof typeof values];
              expect(value).toBeGreaterThanOrEqual(least);
              expect(value).toBeLessThanOrEqual(most);
            }
            expect(
              [sets, reps, holdMs, restMs, setRestMs].every((value) => Number.isSafeInteger(value) && value >= 0),
            ).toBe(true);
          }
          expect(given.blocks.length).toBeGreaterThan(0);
          expect(JSON.stringify(given)).not.toMatch(/NaN|Infinity|null|undefined|-\d+ (?:s|rep|set)/);
        },
      ),
      runs,
    );
  });

  it('gives the same for the same, in whatever order the records come', () => {
    fc.assert(
      fc.property(anyHistory, fc.infiniteStream(fc.nat()), ([program, days, gap], stream) => {
        const { records, day } = live(program, days);
        const today = dayOfNumber(day + gap);
        const keys = new Map(records.map((record) => [record, stream.next().value as number]));
        const shuffled = [...records].sort((a, b) => keys.get(a)! - keys.get(b)!);
        const given = prescribe({ program, records, today });
        expect(prescribe({ program, records, today })).toEqual(given);
        expect(prescribe({ program, records: shuffled, today })).toEqual(given);
      }),
      runs,
    );
  });

  it('is never lower for one more clean session today, never higher for one more missed', () => {
    fc.assert(
      fc.property(anyHistory, ([program, days, gap]) => {
        const { records, day } = live(program, days);
        const today = dayOfNumber(day + gap);
        const places = placesOf(prescribe({ program, records, today }));
        const levelsAfter = (manner: Manner) => {
          const more = recordOf(places, manner, day + gap, 59);
          return placesOf(prescribe({ program, records: [...records, more], today })).map(({ level }) => level);
        };
        const [clean, missed] = [levelsAfter('clean'), levelsAfter('missed')];
        for (const [at, { level }] of places.entries()) {
          expect(clean[at]).toBeGreaterThanOrEqual(level);
          expect(missed[at]).toBeLessThanOrEqual(level);
        }
      }),
      runs,
    );
  });

  it('keeps the weekly growth limit, or gives one rep', () => {
    fc.assert(
      fc.property(anyHistory, ([program, days]) => {
        const { records, day } = live(program, days);
        const today = dayOfNumber(day);
        for (const { block: of, sets, reps, holdMs } of prescribe({ program, records, today }).blocks) {
          const growth = program.blocks[of]!.ladder?.weeklyGrowth;
          const weeks = new Map<string, number>();
          for (const { date, reps: done } of records) {
            const heldMs = done.reduce((sum, rep) => sum + (rep.block === of ? rep.heldMs : 0), 0);
            weeks.set(isoWeek(date), (weeks.get(isoWeek(date)) ?? 0) + heldMs);
          }
          const thisWeekMs = weeks.get(isoWeek(today)) ?? 0;
          weeks.delete(isoWeek(today));
          const lastFour = [...weeks.values()].filter((heldMs) => heldMs > 0).slice(-4);
          if (growth === undefined || lastFour.length === 0 || sets * reps === 1) continue;
          const mean = lastFour.reduce((sum, heldMs) => sum + heldMs, 0) / lastFour.length;
          expect(thisWeekMs + sets * reps * holdMs).toBeLessThanOrEqual(growth * mean + 1e-6);
        }
      }),
      runs,
    );
  });
});
