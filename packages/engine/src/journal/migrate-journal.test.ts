import { expect, it } from 'vitest';
import { migrateJournal } from './migrate-journal.ts';

const noon = '2026-11-25T12:00:00Z';

it('a removed row of version 1 becomes a mark of its list, by the key of that list, and nothing of it is left', () => {
  const file = {
    version: 1,
    drills: [{ id: 'a', note: 'secret', removed: true, editedAt: noon }, { id: 'b' }],
    days: [
      { date: '2026-11-24', removed: true, editedAt: 7 },
      { date: '2026-11-25', feel: 4 },
    ],
    weeks: [{ week: '2026-W48', removed: true, editedAt: noon }],
    majorGoal: { text: 'Hold steady' },
  };
  const before = structuredClone(file);
  expect(migrateJournal(file)).toEqual({
    version: 2,
    drills: [{ id: 'b' }],
    days: [{ date: '2026-11-25', feel: 4 }],
    weeks: [],
    majorGoal: { text: 'Hold steady' },
    removed: [
      { of: 'drills', key: 'a', at: noon },
      { of: 'days', key: '2026-11-24', at: '' },
      { of: 'weeks', key: '2026-W48', at: noon },
    ],
  });
  expect(file).toEqual(before);
});

it('where nothing was removed there are no marks, and only the word true removes', () => {
  const drills = [
    { id: 'a', removed: false },
    { id: 'b', removed: 'true' },
  ];
  expect(migrateJournal({ version: 1, drills })).toEqual({ version: 2, drills });
  expect(Object.keys(migrateJournal({ version: 1 }))).toEqual(['version']);
});

it('what version 1 had no list of is left as it was found: opened programs', () => {
  expect(migrateJournal({ opened: 'x' })).toEqual({ opened: 'x', version: 2 });
});

it('a value in place of a list is an error that names it', () => {
  expect(() => migrateJournal({ days: 'x' })).toThrow(new TypeError('days: expected a list'));
  expect(() => migrateJournal({ weeks: {} })).toThrow(new TypeError('weeks: expected a list'));
});
