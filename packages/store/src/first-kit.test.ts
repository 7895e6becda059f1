import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { expect, test } from 'vitest';
import { createKit } from './kit.ts';
import { openStore } from './open-store.ts';

test('a first run’s kit is as the surroundings say, and gives way to the archer’s own', async () => {
  const indexedDB = new IDBFactory();
  const store = await openStore({ indexedDB, firstKit: { weekStart: 'sunday' } });
  expect(await store.kit()).toEqual({ ...createKit(), weekStart: 'sunday' });
  await store.putKit({ ...createKit(), weekStart: 'monday' });
  store.close();
  const again = await openStore({ indexedDB, firstKit: { weekStart: 'sunday' } });
  expect((await again.kit()).weekStart).toBe('monday');
  again.close();
});

test('also where nothing can be kept', async () => {
  const refused = {
    open: () => {
      throw new DOMException('refused', 'SecurityError');
    },
  } as unknown as IDBFactory;
  const store = await openStore({ indexedDB: refused, firstKit: { weekStart: 'saturday' } });
  expect(store.where).toBe('memory');
  expect((await store.kit()).weekStart).toBe('saturday');
});
