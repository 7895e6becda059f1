import { expect, it } from 'vitest';
import { canonicalText } from './edit-order.ts';
import { groupsOf, rowOf } from './field-groups.ts';
import type { Journal, NoteScrap } from './journal.ts';
import { createJournal, mergeJournals } from './merge-journals.ts';

const note = (id: string, madeAt: string): NoteScrap => ({ id, madeAt, text: id }) as NoteScrap;

it('notes come in the order in which they were made, by the instant and not by its writing; those of one instant by their text, then by id', () => {
  const notes = [
    note('late', '2026-11-25T07:30:00+02:00'), // 05:30 in UTC
    note('b', '2026-11-25T05:00:00Z'),
    note('a', '2026-11-25T05:00:00Z'),
    note('early', '2026-11-25T06:10:00+02:00'), // 04:10 in UTC
    note('as late', '2026-11-25T05:30:00Z'),
  ];
  const merged = mergeJournals(createJournal(), { ...createJournal(), notes } as Journal);
  expect(merged.notes?.map(({ id }) => id)).toEqual(['early', 'a', 'b', 'as late', 'late']);
});

it('milestones come by the day on which they were set, then by id', () => {
  const milestone = (id: string, setDay: string) => ({ id, setDay, text: id });
  const milestones = [milestone('b', '2026-03-02'), milestone('c', '2026-01-07'), milestone('a', '2026-03-02')];
  const merged = mergeJournals(createJournal(), { ...createJournal(), milestones } as Journal);
  expect(merged.milestones?.map(({ id }) => id)).toEqual(['c', 'a', 'b']);
});

it('equal values give equal text, keys in order at every depth, lists as they are', () => {
  const text = '{"a":[3,1,{"x":null,"y":2}],"b":{"c":1,"d":2}}';
  expect(canonicalText({ b: { d: 2, c: 1 }, a: [3, 1, { y: 2, x: null }] })).toBe(text);
  expect(canonicalText({ a: [3, 1, { x: null, y: 2 }], b: { c: 1, d: 2 } })).toBe(text);
});

const rules = { kind: 'page', keyName: 'date' } as const;

it('a row taken apart has neither its key nor what is undefined, and when it is put together again, no stamp that was never made', () => {
  const row = { date: '2026-11-25', feel: 4, note: undefined };
  const groups = groupsOf(row as never, rules);
  expect([...groups.values()]).toEqual([{ value: { feel: 4 }, stamp: '' }]);
  for (const editedAt of [undefined, ''])
    expect(Object.entries(rowOf({ date: '2026-11-25' }, groups, editedAt))).toEqual([
      ['date', '2026-11-25'],
      ['feel', 4],
    ]);
});
