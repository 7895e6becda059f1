import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  anyHistory,
  anyProgram,
  live,
  type Manner,
  placesOf,
  recordOf,
} from '../../../../tests/fixtures/prescription/any-history.ts';
import type { DrillRecord } from '../journal/drill-record.ts';
import type { Lever, Program } from '../program/program.ts';
import { dayNumber, dayOfNumber } from '../units/calendar-day.ts';
import { prescribe } from './prescribe.ts';
import type { Prescription } from './prescription.ts';

// Histories as devices and people leave them: clocks set back or forward, travel, days that no calendar has, records removed, doubled, of
// other programs, and a program edited in between. docs/prescription.md says what happens to each.

type Oddness =
  | 'plain'
  | 'travel'
  | 'unreadable start'
  | 'set back'
  | 'future'
  | 'no day'
  | 'removed'
  | 'twice'
  | 'other program';

const anyOddness = fc.oneof(
  { weight: 4, arbitrary: fc.constant<Oddness>('plain') },
  fc.constantFrom<Oddness>('travel', 'unreadable start', 'set back', 'future', 'no day', 'removed', 'twice'),
  fc.constant<Oddness>('other program'),
);

/** Records that count as nothing today. */
const isNothing = (oddness: Oddness) => ['future', 'no day', 'removed', 'other program'].includes(oddness);

function makeOdd(record: DrillRecord, oddness: Oddness, place: number, today: string): DrillRecord[] {
  const day = dayNumber(record.date);
  const on = (date: string): DrillRecord => ({ ...record, date, startedAt: `${date}T06:00:00Z` });
  switch (oddness) {
    case 'travel':
      return [{ ...record, startedAt: `${record.date}T06:00:00${['+14:00', '-12:00', '+05:45'][place % 3]}` }];
    case 'unreadable start':
      return [{ ...record, startedAt: 'this morning' }];
    case 'set back':
      return [on(dayOfNumber(day - 3650))];
    case 'future':
      return [on(dayOfNumber(dayNumber(today) + 1 + (place % 400)))];
    case 'no day':
      return [{ ...record, date: '2026-02-30' }];
    case 'removed':
      return [{ ...record, removed: true }];
    case 'twice':
      return [record, { ...record, editedAt: `${record.date}T20:00:00Z`, note: 'again' }];
    case 'other program':
      return [{ ...record, program: 'Another' }];
    default:
      return [record];
  }
}

const anyOddHistory = fc
  .tuple(anyHistory, fc.array(anyOddness, { minLength: 24, maxLength: 24 }), fc.infiniteStream(fc.nat()))
  .map(([[program, days, gap], oddnesses, keys]) => {
    const { records, day } = live(program, days);
    const today = dayOfNumber(day + gap);
    const odd = records.flatMap((record, place) => makeOdd(record, oddnesses[place]!, place, today));
    const counted = records.flatMap((record, place) =>
      isNothing(oddnesses[place]!) ? [] : makeOdd(record, oddnesses[place]!, place, today),
    );
    const shuffled = odd
      .map((record) => ({ record, key: keys.next().value as number }))
      .sort((a, b) => a.key - b.key)
      .map(({ record }) => record);
    return { program, records: odd, shuffled, counted, today };
  });

/** The least and the most that a block's own file can come to for a lever. */
function boundsOf({ hold, reps, sets, addedWeight, ladder }: Program['blocks'][number], lever: Lever) {
  const rungs = ladder?.rungs ?? [];
  const values = [
    { hold, reps, sets, addedWeight }[lever],
    ...rungs.filter(({ raise }) => raise === lever).map(({ until }) => until),
    ...rungs.flatMap(({ resets }) => resets?.[lever] ?? []),
  ];
  return { least: Math.min(...values), most: Math.max(...values) };
}

function expectWithinFile(program: Program, given: Prescription): void {
  expect(given.blocks).toHaveLength(program.blocks.length);
  for (const { block, sets, reps, holdMs, addedWeightLbf, restMs, setRestMs, drawMs, letDownMs } of given.blocks) {
    const file = program.blocks[block]!;
    const hold = boundsOf(file, 'hold');
    expect(holdMs).toBeGreaterThanOrEqual(Math.round(hold.least * 1000));
    expect(holdMs).toBeLessThanOrEqual(Math.round(hold.most * 1000));
    for (const [lever, value] of [
      ['sets', sets],
      ['reps', reps],
    ] as const) {
      expect(value).toBeGreaterThanOrEqual(1);
      expect(value).toBeLessThanOrEqual(boundsOf(file, lever).most);
    }
    expect(addedWeightLbf).toBeGreaterThanOrEqual(0);
    expect(addedWeightLbf).toBeLessThanOrEqual(boundsOf(file, 'addedWeight').most);
    for (const ms of [restMs, setRestMs, drawMs, letDownMs]) expect(Number.isSafeInteger(ms) && ms >= 0).toBe(true);
  }
  expect(JSON.stringify(given)).not.toMatch(/NaN|Infinity|null|undefined|-\d+ (?:s|rep|set)/);
}

function levelsAfter(program: Program, records: readonly DrillRecord[], today: string, manner: Manner): number[] {
  const places = placesOf(prescribe({ program, records, today }));
  const more = recordOf(places, manner, dayNumber(today), 59);
  const last = { ...more, id: 'last', startedAt: `${today}T23:59:59-12:00` };
  return placesOf(prescribe({ program, records: [...records, last], today })).map(({ level }) => level);
}

function expectRightWay(program: Program, records: readonly DrillRecord[], today: string): void {
  const levels = placesOf(prescribe({ program, records, today })).map(({ level }) => level);
  const [clean, missed] = [
    levelsAfter(program, records, today, 'clean'),
    levelsAfter(program, records, today, 'missed'),
  ];
  for (const [at, level] of levels.entries()) {
    expect(clean[at]).toBeGreaterThanOrEqual(level);
    expect(missed[at]).toBeLessThanOrEqual(level);
  }
}

const runs = { seed: 7, numRuns: 100 };

describe('over odd histories', () => {
  it('stays within what the file itself allows, in plain numbers', () => {
    fc.assert(
      fc.property(anyOddHistory, ({ program, records, today }) => {
        expectWithinFile(program, prescribe({ program, records, today }));
      }),
      runs,
    );
  });

  it('gives the same in whatever order the records come', () => {
    fc.assert(
      fc.property(anyOddHistory, ({ program, records, shuffled, today }) => {
        expect(prescribe({ program, records: shuffled, today })).toEqual(prescribe({ program, records, today }));
      }),
      runs,
    );
  });

  it('takes nothing from records that are not of this program or not yet, and says that they were left out', () => {
    fc.assert(
      fc.property(anyOddHistory, ({ program, records, counted, today }) => {
        const [given, without] = [records, counted].map((some) => prescribe({ program, records: some, today }));
        const isWarning = ({ rule }: { rule: string }) => rule === 'future' || rule === 'impossibleDate';
        expect(given!.blocks).toEqual(without!.blocks);
        expect(given!.reasons.filter((reason) => !isWarning(reason))).toEqual(without!.reasons);
        const futureCount = records.filter(
          ({ date, program: of, removed }) => of === program.title && !removed && date > today && date !== '2026-02-30',
        ).length;
        expect(given!.reasons.find(({ rule }) => rule === 'future')?.facts.records ?? 0).toBe(futureCount);
      }),
      runs,
    );
  });

  it('is never lower for one more clean session now, never higher for one more missed', () => {
    fc.assert(
      fc.property(anyOddHistory, ({ program, records, today }) => expectRightWay(program, records, today)),
      runs,
    );
  });
});

describe('over a program edited in the middle of a history', () => {
  it('stays within the file of today and moves the right way', () => {
    fc.assert(
      fc.property(anyHistory, anyProgram, ([before, days, gap], after) => {
        const { records, day } = live(before, days);
        const today = dayOfNumber(day + gap);
        expectWithinFile(after, prescribe({ program: after, records, today }));
        expectRightWay(after, records, today);
      }),
      runs,
    );
  });
});

describe('over ten years', () => {
  it('stays within the file, whatever each day was', () => {
    const manners = fc.constantFrom<Manner>('clean', 'clean', 'clean', 'missed', 'unsure', 'hard', 'pain', 'half');
    fc.assert(
      fc.property(anyProgram, fc.array(manners, { minLength: 20, maxLength: 40 }), (program, manner) => {
        const records: DrillRecord[] = [];
        let doses: ReturnType<typeof placesOf> = [];
        for (let day = 20_000; day < 23_650; day += 3) {
          // Sessions of what was asked for at the beginning of their year.
          if (records.length % 122 === 0) doses = placesOf(prescribe({ program, records, today: dayOfNumber(day) }));
          const how = manner[records.length % manner.length]!;
          records.push({ ...recordOf(doses, how, day, 0), id: `day ${day}` });
        }
        expectWithinFile(program, prescribe({ program, records, today: dayOfNumber(23_650) }));
      }),
      { seed: 7, numRuns: 2, endOnFailure: true },
    );
  });
});
