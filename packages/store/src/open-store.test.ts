import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach } from 'vitest';
import { openStore } from './open-store.ts';
import type { Store } from './store.ts';
import { describeStore } from './store-acceptance.ts';

const opened: Store[] = [];
afterEach(() => {
  for (const store of opened.splice(0)) store.close();
});
const keep = async (store: Promise<Store>): Promise<Store> => {
  opened.push(await store);
  return store;
};

let factory = new IDBFactory();
describeStore(
  'IndexedDB (fake-indexeddb)',
  () => {
    factory = new IDBFactory();
    return keep(openStore({ indexedDB: factory }));
  },
  () => keep(openStore({ indexedDB: factory })),
);

const refusing = Object.assign(new IDBFactory(), {
  open: () => {
    throw new DOMException('no', 'SecurityError');
  },
});
describeStore('memory', () => keep(openStore({ indexedDB: refusing })));
