import { expect, test } from 'vitest';
import type { NoteScrap } from '../journal/journal.ts';
import { notesShown } from './notes-shown.ts';

const notes: NoteScrap[] = [
  { id: 'a', madeAt: '2026-11-01T07:00:00Z', programId: 'p' },
  { id: 'b', madeAt: '2026-11-03T08:00:00+02:00', week: '2026-W45' },
  { id: 'c', madeAt: '2026-11-03T07:00:00Z', removed: true },
  { id: 'd', madeAt: '2026-11-03T06:30:00Z', programId: 'p' },
];
const idsOf = (shown: readonly NoteScrap[]) => shown.map(({ id }) => id);

test('the newest comes first, by instant; a removed one is gone', () => {
  expect(idsOf(notesShown(notes))).toEqual(['d', 'b', 'a']);
});

test('a wall of one program or one week shows its own', () => {
  expect(idsOf(notesShown(notes, { programId: 'p' }))).toEqual(['d', 'a']);
  expect(idsOf(notesShown(notes, { week: '2026-W45' }))).toEqual(['b']);
});
