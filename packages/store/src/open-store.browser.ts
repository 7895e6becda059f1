import { afterEach, expect, it } from 'vitest';
import { openStore } from './open-store.ts';
import type { Store } from './store.ts';
import { describeStore } from './store-acceptance.ts';

const opened: Store[] = [];
let name = '';
let count = 0;
const keep = async (store: Promise<Store>): Promise<Store> => {
  opened.push(await store);
  return store;
};
afterEach(() => {
  for (const store of opened.splice(0)) store.close();
  if (name !== '') indexedDB.deleteDatabase(name);
});
const openFresh = (): Promise<Store> => {
  count += 1;
  name = `store-test-${count}`;
  return keep(openStore({ name }));
};

describeStore('IndexedDB (this browser)', openFresh, () => keep(openStore({ name })));

it('hears of another tab’s change', async () => {
  const here = await openFresh();
  const there = await keep(openStore({ name }));
  expect(here.where).toBe('disk');
  expect((await here.journal()).days).toEqual([]);
  const heard = new Promise<void>((resolve) => here.subscribe(() => resolve()));
  await there.putDay({ date: '2026-01-01', feel: 4 });
  await heard;
  expect((await here.journal()).days).toEqual([{ date: '2026-01-01', feel: 4 }]);
});
