import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DrillRecord, Outcome, RepRecord } from '../journal/drill-record.ts';
import { leverRanges, type Program, programSchema } from '../program/program.ts';
import { dayOfNumber, isoWeek } from '../units/calendar-day.ts';
import { prescribe } from './prescribe.ts';
import type { Prescription } from './prescription.ts';

// Programs are drawn from the whole range of the file, contradictory ladders included. A history is lived: each session follows that day's numbers.

const holdSeconds = fc.integer({ min: 5, max: 1800 }).map((tenths) => tenths / 10);
const resets = fc.record(
  { hold: holdSeconds, reps: fc.integer({ min: 1, max: 12 }), sets: fc.integer({ min: 1, max: 4 }) },
  { requiredKeys: [] },
);
const rung = fc.oneof(
  fc.record({
    raise: fc.constant('hold'),
    by: fc.integer({ min: 1, max: 200 }).map((n) => n / 10),
    until: holdSeconds,
  }),
  fc.record({ raise: fc.constant('reps'), by: fc.integer({ min: 1, max: 4 }), until: fc.integer({ min: 1, max: 60 }) }),
  fc.record({ raise: fc.constant('sets'), by: fc.integer({ min: 1, max: 2 }), until: fc.integer({ min: 1, max: 20 }) }),
  fc.record({
    raise: fc.constant('addedWeight'),
    by: fc.integer({ min: 1, max: 20 }).map((n) => n / 10),
    until: fc.integer({ min: 0, max: 30 }),
  }),
);
const ladder = fc.record(
  {
    rungs: fc.array(
      fc.tuple(rung, fc.option(resets, { nil: undefined })).map(([own, back]) => ({ ...own, resets: back })),
      { minLength: 1, maxLength: 4 },
    ),
    climbAfter: fc.record({
      cleanSessions: fc.integer({ min: 1, max: 3 }),
      effortAtMost: fc.integer({ min: 0, max: 10 }),
    }),
    stepDownAfter: fc.record({
      missedShare: fc.integer({ min: 0, max: 10 }).map((n) => n / 10),
      sessions: fc.integer({ min: 1, max: 3 }),
    }),
    deload: fc.record({
      everyWeeks: fc.integer({ min: 2, max: 6 }),
      keep: fc.integer({ min: 2, max: 9 }).map((n) => n / 10),
    }),
    layoff: fc.uniqueArray(
      fc.record({ days: fc.integer({ min: 1, max: 60 }), stepsDown: fc.integer({ min: 1, max: 5 }) }),
      {
        selector: ({ days }) => days,
        maxLength: 3,
      },
    ),
    weeklyGrowth: fc.integer({ min: 10, max: 20 }).map((n) => n / 10),
  },
  { requiredKeys: ['rungs'] },
);
const block = fc.record({
  title: fc.constantFrom('One', 'Two'),
  drill: fc.constantFrom('holding', 'power', 'free'),
  sets: fc.integer({ min: 1, max: 4 }),
  reps: fc.integer({ min: 1, max: 12 }),
  draw: fc.integer({ min: 5, max: 50 }).map((n) => n / 10),
  hold: holdSeconds,
  letDown: fc.integer({ min: 5, max: 50 }).map((n) => n / 10),
  rest: fc.oneof(
    fc.record({ seconds: fc.integer({ min: 0, max: 300 }) }),
    fc.record({ timesHold: fc.integer({ min: 0, max: 30 }).map((n) => n / 10) }),
  ),
  setRest: fc.option(fc.integer({ min: 0, max: 300 }), { nil: undefined }),
  ladder: fc.option(ladder, { nil: undefined, freq: 8 }),
});
const anyProgram = fc
  .array(block, { minLength: 1, maxLength: 3 })
  .map((blocks) =>
    programSchema.parse({ format: 'larkhold/program', version: 1, title: 'Drawn', tool: 'bow', blocks }),
  );

type Manner = 'clean' | 'missed' | 'one short' | 'unsure' | 'half' | 'typed in' | 'hard' | 'pain';
const anyDays = fc.array(
  fc.record({
    gapDays: fc.oneof({ weight: 9, arbitrary: fc.integer({ min: 0, max: 4 }) }, fc.integer({ min: 5, max: 400 })),
    manner: fc.oneof(
      { weight: 4, arbitrary: fc.constant<Manner>('clean') },
      fc.constantFrom<Manner>('missed', 'one short', 'unsure', 'half', 'typed in', 'hard', 'pain'),
    ),
  }),
  { maxLength: 24 },
);

const FIRST_DAY = 20_000;

/** A record of reps done in some manner: of each block so many sets and reps of a hold. */
function recordOf(
  doses: readonly { block: number; sets: number; reps: number; holdMs: number }[],
  manner: Manner,
  day: number,
  place: number,
): DrillRecord {
  const outcomes: Partial<Record<Manner, (at: number) => Outcome>> = {
    missed: () => 'short',
    'one short': (at) => (at === 0 ? 'short' : 'held'),
    unsure: (at) => (at === 0 ? 'unsure' : 'held'),
  };
  const reps = doses.flatMap(({ block: of, sets, reps: count, holdMs }) =>
    Array.from({ length: sets * count }, (_, at): RepRecord => {
      const outcome = outcomes[manner]?.(at) ?? 'held';
      const heldMs = outcome === 'short' ? Math.floor(holdMs / 2) : holdMs;
      const where = { block: of, set: Math.floor(at / count), rep: at % count, hand: 'usual' as const };
      return { ...where, prescribedMs: holdMs, heldMs, outcome };
    }),
  );
  const startedAt = `${dayOfNumber(day)}T06:${String(place).padStart(2, '0')}:00Z`;
  return {
    ...{ id: `r${place}`, program: 'Drawn', date: dayOfNumber(day), startedAt, endedAt: startedAt },
    reps: manner === 'half' ? reps.slice(0, Math.ceil(reps.length / 2)) : reps,
    prescribedReps: manner === 'typed in' ? undefined : reps.length,
    effort: manner === 'hard' ? 10 : 0,
    pain: manner === 'pain' || undefined,
  };
}

function live(
  program: Program,
  days: readonly { gapDays: number; manner: Manner }[],
): { records: DrillRecord[]; day: number } {
  const records: DrillRecord[] = [];
  let day = FIRST_DAY;
  for (const [place, { gapDays, manner }] of days.entries()) {
    day += gapDays;
    const { blocks } = prescribe({ program, records, today: dayOfNumber(day) });
    records.push(recordOf(blocks, manner, day, place));
  }
  return { records, day };
}

/** The whole dose of each block's place on its ladder. */
function placesOf({ reasons }: Prescription) {
  return reasons
    .filter(({ facts }) => 'startHold' in facts)
    .map(({ block: of, facts }) => ({
      ...{ block: of!, sets: Number(facts.sets), reps: Number(facts.reps), level: Number(facts.level) },
      holdMs: Math.round(Number(facts.hold) * 1000),
    }));
}

const anyHistory = fc.tuple(anyProgram, anyDays, fc.integer({ min: 0, max: 40 }));
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
