import { compareJournals, createJournal, type Journal } from '@larkhold/engine';
import { formatDay } from '@larkhold/words';
import { expect, test } from 'vitest';
import { findClashes } from './edit-clashes.ts';

const early = '2026-11-25T18:00:00Z';
const late = '2026-11-25T19:00:00Z';
const withThings = (things: Partial<Journal>): Journal => ({ ...createJournal(), ...things });
const find = (ours: Journal, incoming: Journal) => findClashes(ours, incoming, compareJournals(ours, incoming));

test('what the earlier edit of a day says and the later one says otherwise is shown, on whichever side it is', () => {
  const arrows = withThings({
    days: [{ date: '2026-11-25', arrows: [{ kind: 'practice', count: 60 }], feel: 4, note: 'Windy', editedAt: early }],
  });
  const feel = withThings({
    days: [{ date: '2026-11-25', arrows: [{ kind: 'practice', count: 6 }], note: 'Calm', pain: true, editedAt: late }],
  });
  const told = { name: formatDay('2026-11-25'), href: '#/week/2026-W48/2026-11-25' };
  const leftOut = [expect.stringMatching(/^60\sarrows$/), 'note: “Windy”'];
  expect(find(arrows, feel)).toEqual([{ ...told, isOurs: false, leftOut }]);
  expect(find(feel, arrows)).toEqual([{ ...told, isOurs: true, leftOut }]);
});

test('an edit that only adds leaves nothing out, and a removal is meant', () => {
  const before = withThings({ days: [{ date: '2026-11-25', feel: 4, editedAt: early }] });
  const more = withThings({ days: [{ date: '2026-11-25', feel: 4, note: 'Windy', editedAt: late }] });
  const gone = withThings({ days: [{ date: '2026-11-25', feel: 4, removed: true, editedAt: late }] });
  expect(find(before, more)).toEqual([]);
  expect(find(more, before)).toEqual([]);
  expect(find(before, gone)).toEqual([]);
});

test('where each side has a later edit of something, both are shown', () => {
  const ours = withThings({
    days: [{ date: '2026-11-25', note: 'Ours', feel: 4, editedAt: late, edits: { note: early } }],
  });
  const theirs = withThings({
    days: [{ date: '2026-11-25', note: 'Theirs', feel: 3, editedAt: late, edits: { feel: early } }],
  });
  expect(find(ours, theirs)).toMatchObject([
    { isOurs: false, leftOut: ['note: “Ours”'] },
    { isOurs: true, leftOut: [expect.stringContaining('felt')] },
  ]);
});

test('weeks too, after the days, newest first', () => {
  const ours = withThings({
    days: [
      { date: '2026-11-24', note: 'Ours', editedAt: early },
      { date: '2026-11-25', note: 'Ours', editedAt: early },
    ],
    weeks: [{ week: '2026-W48', focus: 'Low shoulder', wentRight: 'Set-up', editedAt: early }],
  });
  const theirs = withThings({
    days: [
      { date: '2026-11-24', note: 'Theirs', editedAt: late },
      { date: '2026-11-25', note: 'Theirs', editedAt: late },
    ],
    weeks: [{ week: '2026-W48', focus: 'Low shoulder', wentRight: 'Reach', needsWork: 'Let-down', editedAt: late }],
  });
  expect(find(ours, theirs).map(({ name, leftOut }) => [name, ...leftOut])).toEqual([
    [formatDay('2026-11-25'), 'note: “Ours”'],
    [formatDay('2026-11-24'), 'note: “Ours”'],
    ['Week 48 of 2026', 'what went right: “Set-up”'],
  ]);
});
