import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
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

/** A kit as version 2 of the database held it. */
const kitOf2 = (skipRep: string[]) => ({
  bow: 'barebow',
  viewing: { distanceM: 3, byMirror: true, flipped: true },
  keys: { begin: ['Space'], pause: ['KeyP'], letDownNow: ['KeyL'], skipRep, moreRest: ['KeyR'] },
});

async function kitAfter(skipRep: string[]) {
  const indexedDB = new IDBFactory();
  const old = await openIdbAdapter({ name: 'x', indexedDB, steps: migrationSteps.slice(0, 2) });
  await old.write([{ table: 'single', do: 'put', key: 'kit', value: kitOf2(skipRep) }]);
  old.close();
  const store = await openStore({ name: 'x', indexedDB });
  const kit = await store.kit();
  expect((await store.integrityReport()).setAside).toEqual([]);
  store.close();
  return kit;
}

test('a kit of version 2 keeps what it held, listens to no microphone, and counts a mirror at one metre', async () => {
  const kit = await kitAfter(['KeyX']);
  expect(kit).toMatchObject({
    bow: 'barebow',
    viewing: { distanceM: 3, byMirror: true, flipped: true, mirrorToScreenM: 1 },
    keys: { pause: ['KeyP'], skipRep: ['KeyX'], stop: [] },
    listens: { gamepad: true, headset: false, microphone: false },
    fullScreen: false,
  });
});

test('S for a skip becomes N where nobody had changed it', async () => {
  expect((await kitAfter(['ArrowRight', 'KeyS'])).keys.skipRep).toEqual(['ArrowRight', 'KeyN']);
  expect((await kitAfter(['KeyS'])).keys.skipRep).toEqual(['KeyS']);
});

test('a backup with other presses restored and written again holds the same', async () => {
  const text = readFileSync(new URL('../../../tests/fixtures/backup/v1-presses.backup.json', import.meta.url), 'utf8');
  const read = parseBackup(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const store = createLocalStore({ adapter: createMemoryAdapter(), now: () => '2026-05-01T10:00:00Z' });
  await putBack(store, read.backup);
  // What a kit has learned since then is filled in; nothing that was there is lost.
  const written: unknown = JSON.parse(formatBackup(await createBackup(store, read.backup.madeAt)));
  expect(written).toMatchObject(asVersion2(text));
  expect(read.backup.kit.listens.microphone).toBe(true);
});
