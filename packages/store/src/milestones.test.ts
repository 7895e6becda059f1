import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import type { Milestone } from '@larkhold/engine';
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

const minute: Milestone = { id: 'm1', text: 'A minute at full draw', setDay: '2026-03-29' };
const createStore = () => createLocalStore({ adapter: createMemoryAdapter(), now: () => '2026-05-01T10:00:00Z' });

test('a database of version 3 gets milestones and a folder, keeps what it holds, and shows the check at home again', async () => {
  const indexedDB = new IDBFactory();
  const old = await openIdbAdapter({ name: 'x', indexedDB, steps: migrationSteps.slice(0, 3) });
  const day = { date: '2026-05-01', feel: 3 };
  await old.write([
    { table: 'days', do: 'put', key: day.date, value: day },
    {
      table: 'single',
      do: 'put',
      key: 'kit',
      value: { bow: 'barebow', rangeCheckDone: true, backup: { everyDays: 7 } },
    },
  ]);
  old.close();
  const store = await openStore({ name: 'x', indexedDB });
  await store.putMilestone(minute);
  await store.putBackupFolder({ name: 'Backups' });
  store.close();
  const again = await openStore({ name: 'x', indexedDB });
  expect(await again.journal()).toMatchObject({ days: [day], milestones: [minute] });
  expect(await again.backupFolder()).toEqual({ name: 'Backups' });
  expect(await again.kit()).toMatchObject({
    bow: 'barebow',
    rangeCheckPlaces: [],
    backup: { everyDays: 7, toFolder: false },
  });
  expect((await again.integrityReport()).setAside).toEqual([]);
  await again.putBackupFolder(undefined);
  expect(await again.backupFolder()).toBeUndefined();
  again.close();
});

test('milestones go through a merge and a replacement like everything else', async () => {
  const store = createStore();
  const before = await store.journal();
  await store.putMilestone(minute);
  const reached = { ...minute, reachedDay: '2026-04-30', editedAt: '2026-04-30T09:00:00Z' };
  await store.mergeInto({ drills: [], days: [], weeks: [], milestones: [reached, { ...minute, id: 'm2' }] });
  expect((await store.journal()).milestones?.map(({ id, reachedDay }) => [id, reachedDay])).toEqual([
    ['m1', '2026-04-30'],
    ['m2', undefined],
  ]);
  await store.replaceJournal(before);
  expect((await store.journal()).milestones).toBeUndefined();
  await expect(store.putMilestone({ ...minute, setDay: 'soon' })).rejects.toThrow(TypeError);
});

test('a backup with milestones restored and written again holds the same; the folder is not in it', async () => {
  const text = readFileSync(
    new URL('../../../tests/fixtures/backup/v1-milestones.backup.json', import.meta.url),
    'utf8',
  );
  const read = parseBackup(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const store = createStore();
  await store.putBackupFolder({ name: 'Backups' });
  await putBack(store, read.backup);
  const written: unknown = JSON.parse(formatBackup(await createBackup(store, read.backup.madeAt)));
  expect(written).toMatchObject(asVersion2(text));
  expect(JSON.stringify(written)).not.toContain('Backups');
});
