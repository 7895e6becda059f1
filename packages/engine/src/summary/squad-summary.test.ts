import { expect, test } from 'vitest';
import { createHandOver, type HandOver } from '../exchange/hand-over.ts';
import { createJournal } from '../journal/merge-journals.ts';
import { addHandOver, orderSquad, summarizeArcher } from './squad-summary.ts';

const drill = (date: string, pain = false) => ({
  id: date,
  date,
  pain,
  program: 'Slow mornings',
  startedAt: `${date}T06:30:00Z`,
  endedAt: `${date}T06:40:00Z`,
  reps: [],
});

function handOverOf(archer: string, dates: readonly string[], painDay = ''): HandOver {
  return createHandOver({
    journal: {
      ...createJournal(),
      drills: dates.map((date) => drill(date, date === painDay)),
      weeks: [{ week: '2026-W46', plannedDays: [1, 3] }],
    },
    ...{ archer, archerId: archer, from: '2026-11-09', to: '2026-11-25', madeAt: '2026-11-25T20:00:00Z' },
  });
}

// Counted on a calendar: planned are the Mondays and Wednesdays 9, 11, 16, 18, 23 and 25 November.
test('an archer is summed up by planned days, pain and the last day written', () => {
  const line = summarizeArcher(
    handOverOf('Ines', ['2026-11-09', '2026-11-10', '2026-11-18'], '2026-11-10'),
    '2026-11-27',
  );
  expect(line).toMatchObject({ drilledDays: 3, plannedCount: 6, doneCount: 2, painDays: ['2026-11-10'] });
  expect(line).toMatchObject({ lastDay: '2026-11-18', silentDays: 9 });
});

test('an archer who wrote nothing is silent since the file begins', () => {
  const line = summarizeArcher(handOverOf('Ines', []), '2026-11-25');
  expect(line.lastDay).toBeUndefined();
  expect(line.silentDays).toBe(16);
});

test('pain comes first, then silence, then names', () => {
  const lines = [
    summarizeArcher(handOverOf('Anna', ['2026-11-25']), '2026-11-25'),
    summarizeArcher(handOverOf('Bela', []), '2026-11-25'),
    summarizeArcher(handOverOf('Cleo', ['2026-11-24'], '2026-11-24'), '2026-11-25'),
  ];
  expect(orderSquad(lines).map(({ handOver }) => handOver.archer)).toEqual(['Cleo', 'Bela', 'Anna']);
});

test('of two files of one archer the later one counts, in any order', () => {
  const early = handOverOf('Ines', []);
  const late = { ...early, madeAt: '2026-11-26T20:00:00Z' };
  expect(addHandOver([early], late)).toEqual({ open: [late], isTaken: true });
  expect(addHandOver([late], early)).toEqual({ open: [late], isTaken: false });
});

// 28 days up to 25 November begin on 29 October: 25 days of November and 3 of October.
test('the table looks 28 days back, not a day further, and never before the file', () => {
  const spanned = (dates: readonly string[], from: string) =>
    summarizeArcher({ ...handOverOf('Ines', []), from, drills: dates.map((date) => drill(date, true)) }, '2026-11-25');
  expect(spanned(['2026-10-28', '2026-10-29'], '2026-10-01')).toMatchObject({
    ...{ drilledDays: 1, painDays: ['2026-10-29'], lastDay: '2026-10-29' },
  });
  // Planned from the page of week 46 on: the Monday before the file, 9 November, is not asked for.
  const weeks = [{ week: '2026-W46', plannedDays: [1, 3] }];
  expect(summarizeArcher({ ...handOverOf('Ines', []), from: '2026-11-10', weeks }, '2026-11-25').plannedCount).toBe(5);
});

test('the last drill is the last with a rep, and nobody is silent for less than no days', () => {
  const rep = { block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: 1, heldMs: 1, outcome: 'held' } as const;
  const drills = [
    { ...drill('2026-11-10'), reps: [rep] },
    { ...drill('2026-11-09'), reps: [rep] },
    drill('2026-11-11'),
  ];
  const line = summarizeArcher({ ...handOverOf('Ines', []), drills }, '2026-11-10');
  expect(line.lastDrill?.id).toBe('2026-11-10');
  expect(line.silentDays).toBe(0);
});

test('silent is who has written nothing for seven days; a file of the same instant is no other one', () => {
  const lines = [
    summarizeArcher(handOverOf('Anna', ['2026-11-19']), '2026-11-25'),
    summarizeArcher(handOverOf('Zoe', ['2026-11-18']), '2026-11-25'),
  ];
  expect(orderSquad(lines).map(({ handOver }) => handOver.archer)).toEqual(['Zoe', 'Anna']);
  const file = handOverOf('Ines', []);
  expect(addHandOver([file], { ...file, archer: 'Copy' })).toEqual({ open: [file], isTaken: false });
});
