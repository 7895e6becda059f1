import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import type { NoteScrap } from '@larkhold/engine';
import { IDBFactory } from 'fake-indexeddb';
import { expect, test } from 'vitest';
import { createBackup, formatBackup, parseBackup } from './backup.ts';
import { openIdbAdapter } from './idb-adapter.ts';
import { createLocalStore } from './local-store.ts';
import { createMemoryAdapter } from './memory-adapter.ts';
import { migrationSteps } from './migrations.ts';
import { openStore } from './open-store.ts';
import { asVersion2 } from './trial/as-version-2.ts';
import { putBack } from './trial/put-back.ts';

const note: NoteScrap = { id: 'n1', madeAt: '2026-05-01T09:00:00Z', text: 'Elbow round', week: '2026-W18' };
const createStore = () => createLocalStore({ adapter: createMemoryAdapter(), now: () => '2026-05-01T10:00:00Z' });

test('a database of version 1 gets the notes wall and keeps what it holds', async () => {
  const factory = new IDBFactory();
  const old = await openIdbAdapter({ name: 'x', indexedDB: factory, steps: migrationSteps.slice(0, 1) });
  const day = { date: '2026-05-01', feel: 3 };
  await old.write([{ table: 'days', do: 'put', key: day.date, value: day }]);
  old.close();
  const store = await openStore({ name: 'x', indexedDB: factory });
  await store.putNote(note);
  expect(await store.journal()).toMatchObject({ days: [day], notes: [note] });
  store.close();
  const again = await openStore({ name: 'x', indexedDB: factory });
  expect((await again.journal()).notes).toEqual([note]);
  again.close();
});

test('notes go through a merge and a replacement like everything else', async () => {
  const store = createStore();
  const before = await store.journal();
  await store.putNote(note);
  const later = { ...note, text: 'Elbow round, early', editedAt: '2026-05-02T09:00:00Z' };
  await store.mergeInto({ drills: [], days: [], weeks: [], notes: [later, { ...note, id: 'n2' }] });
  expect((await store.journal()).notes?.map(({ id, text }) => [id, text])).toEqual([
    ['n1', 'Elbow round, early'],
    ['n2', 'Elbow round'],
  ]);
  await store.replaceJournal(before);
  expect((await store.journal()).notes).toBeUndefined();
});

test('a note that no schema takes is the caller\u2019s mistake', async () => {
  const wrong = { ...note, week: 'soon' };
  await expect(createStore().putNote(wrong)).rejects.toThrow(TypeError);
});

test('a backup with notes is read for ever, put back and written out whole', async () => {
  const text = readFileSync(new URL('../../../tests/fixtures/backup/v1-notes.backup.json', import.meta.url), 'utf8');
  const read = parseBackup(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const store = createStore();
  await putBack(store, read.backup);
  const { notes, removed } = await store.journal();
  expect([notes?.length, removed?.length]).toEqual([1, 2]);
  // What a kit has learned since then is filled in; nothing that was there is lost.
  const written: unknown = JSON.parse(formatBackup(await createBackup(store, '2026-01-05T07:00:00Z')));
  expect(written).toMatchObject(asVersion2(text));
});
