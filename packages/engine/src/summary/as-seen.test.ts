import { expect, it } from 'vitest';
import { summarise } from '../archer/drill-summary.ts';
import { estimateMaxHold } from '../archer/estimate-max-hold.ts';
import { formatCalendar } from '../exchange/format-calendar.ts';
import { journalTables } from '../exchange/journal-tables.ts';
import type { DrillRecord } from '../journal/drill-record.ts';
import { createJournal } from '../journal/merge-journals.ts';
import type { Outcome, RepRecord } from '../journal/rep-record.ts';
import { holdTime, seenHoldTime } from '../load/hold-time.ts';
import { totalsByDay } from '../load/totals.ts';
import { builtInPrograms } from '../program/built-in-programs.ts';
import { plannedAgainstDone } from '../season/planned-against-done.ts';
import { seasonSchema } from '../season/season.ts';
import { climbWeeks } from './climb-weeks.ts';
import { daysOfMonth } from './month-days.ts';
import { createTrends } from './trend-series.ts';

// Five holds of 30 s that the clock knows otherwise than the camera. By hand: 30 + 21.5 + 28.5 + 30 + 13 = 123 s at full draw, of which 93 s
// were seen; two were held in full, two let down early, and of one that began late nobody can say. The clock alone has 132 s and four held.

const rep = (at: number, heldMs: number, outcome: Outcome, seen?: [fromMs: number, toMs: number]): RepRecord => ({
  ...{ block: 0, set: 0, rep: at, hand: 'usual', prescribedMs: 30_000, heldMs, outcome },
  ...(seen ? { seen: { fromMs: seen[0], toMs: seen[1] } } : {}),
});
const date = '2026-11-02';
const record: DrillRecord = {
  ...{ id: 'seen', program: 'One set of ten', date, startedAt: `${date}T07:00:00Z`, endedAt: `${date}T07:20:00Z` },
  reps: [
    rep(0, 30_000, 'held', [0, 30_200]),
    rep(1, 30_000, 'held', [0, 21_500]),
    rep(2, 30_000, 'held', [1500, 30_000]),
    rep(3, 30_000, 'held'),
    rep(4, 12_000, 'short', [0, 13_000]),
  ],
};
const journal = { ...createJournal(), drills: [record] };

const season = seasonSchema.parse({
  ...{ format: 'larkhold/season', version: 1, title: 'Winter' },
  blocks: [{ title: 'Base', from: date, weeks: 4, days: { monday: [{ title: 'One set of ten' }] } }],
});
const tables = journalTables(journal);

function column(table: 'drills' | 'reps' | 'days', name: string) {
  const at = tables[table][0]?.indexOf(name) ?? -1;
  return tables[table].slice(1).map((row) => row[at]);
}

function sum(numbers: readonly unknown[]): number {
  return numbers.reduce<number>((total, number) => total + Number(number), 0);
}

function inCalendar() {
  let told: { heldMs: number; seenMs: number; heldCount: number } | undefined;
  const words = { summary: '', description: '' };
  formatCalendar(journal, {
    madeAt: `${date}T08:00:00Z`,
    words: {
      drill: (one) => {
        told = one;
        return words;
      },
      day: () => '',
    },
  });
  return told;
}

it.each<[string, () => number | undefined]>([
  ['a calendar file', () => inCalendar()?.heldMs],
  ['the table of drills', () => sum(column('drills', 'hold seconds')) * 1000],
  ['the table of reps', () => sum(column('reps', 'held seconds')) * 1000],
  ['the table of days', () => sum(column('days', 'hold seconds')) * 1000],
  [
    'planned against done',
    () => {
      const span = { season, records: [record], from: date, to: date, doseOf: () => undefined };
      return plannedAgainstDone(span).done.seconds * 1000;
    },
  ],
  ['the climb', () => climbWeeks({ records: [record], plan: [], today: date })[0]?.heldMs],
  ['the load', () => holdTime([record]) * 1000],
  ['the month', () => sum(daysOfMonth(journal, '2026-11').map(({ heldMs }) => heldMs))],
  ['the totals of a day', () => totalsByDay(journal).get(date)?.holdMs],
  ['the trends', () => createTrends(journal, date).points.at(-1)?.values.hold],
  ['what is known of the archer', () => summarise(record).heldMs],
])('counts seconds at full draw as they were seen: %s', (_name, heldMs) => {
  expect(heldMs()).toBe(123_000);
});

it.each<[string, () => number | undefined]>([
  ['a calendar file', () => inCalendar()?.seenMs],
  ['the table of drills', () => sum(column('drills', 'seen seconds')) * 1000],
  ['the table of days', () => sum(column('days', 'seen seconds')) * 1000],
  ['the load', () => seenHoldTime([record]) * 1000],
  ['the totals of a day', () => totalsByDay(journal).get(date)?.seenMs],
])('says how much of it a camera saw: %s', (_name, seenMs) => {
  expect(seenMs()).toBe(93_000);
});

it('counts as held in full what neither clock nor camera doubts', () => {
  expect(inCalendar()?.heldCount).toBe(2);
  expect(totalsByDay(journal).get(date)?.heldCount).toBe(2);
  expect(summarise(record).blocks[0]).toMatchObject({ heldCount: 2, doubtfulCount: 1 });
  expect(['held', 'short', 'skipped', 'unsure'].map((name) => column('drills', name))).toEqual([[2], [2], [0], [1]]);
  expect(column('reps', 'outcome')).toEqual(['held', 'short', 'unsure', 'held', 'short']);
});

it('keeps the clock’s own word beside it in the table of reps', () => {
  expect(column('reps', 'clock seconds')).toEqual([30, 30, 30, 30, 12]);
  expect(column('reps', 'clock outcome')).toEqual(['held', 'held', 'held', 'held', 'short']);
  expect(column('reps', 'seen from')).toEqual([0, 0, 1.5, undefined, 0]);
  expect(column('reps', 'seen to')).toEqual([30.2, 21.5, 30, undefined, 13]);
});

it('takes for the longest hold one that was seen to its end', () => {
  // 30 s by the clock, let down after 21.5 s: nothing was held in full.
  const early = { ...record, reps: record.reps.slice(1, 2) };
  expect(climbWeeks({ records: [early], plan: [], today: date })[0]?.longestMs).toBe(0);
  const trends = createTrends({ ...journal, drills: [early] }, date);
  expect(trends.points.at(-1)?.values).toMatchObject({ hold: 21_500 });
  expect(trends.points.at(-1)?.values.longest).toBeUndefined();
});

it('takes a test for as long as it was seen, and nothing from a hold that began late', () => {
  const test = (reps: RepRecord[]) =>
    estimateMaxHold([{ ...record, tool: 'bow', kind: 'test', reps }], builtInPrograms, '2026-11-05');
  expect(test([rep(0, 30_000, 'held', [0, 21_500])])).toMatchObject({ kind: 'estimate', seconds: 21.5 });
  expect(test([rep(0, 30_000, 'held', [1500, 30_000])])).toMatchObject({ kind: 'too little data' });
});
