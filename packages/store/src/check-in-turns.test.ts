import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { expect, it } from 'vitest';
import type { Found, Table } from './adapter.ts';
import { checkInTurns } from './check-in-turns.ts';
import { openIdbAdapter } from './idb-adapter.ts';
import type { SetAside } from './integrity-report.ts';
import { createLocalStore } from './local-store.ts';
import { createMemoryAdapter } from './memory-adapter.ts';
import { checkTable } from './stored-rows.ts';
import { record } from './trial/trial-record.ts';

const rowsOf = (count: number) =>
  new Map<string, unknown>(
    Array.from({ length: count }, (_, index) => {
      const id = `d${String(index).padStart(5, '0')}`;
      return [id, index % 700 === 3 ? { id, reps: 'none' } : { ...record, id }];
    }),
  );

it('checks as at once, in order, and lets others in between', async () => {
  const rows = rowsOf(2500);
  const [once, inTurns]: [SetAside[], SetAside[]] = [[], []];
  const expected = checkTable('drills', rows, once);
  let turns = 0;
  const beat = setInterval(() => {
    turns += 1;
  }, 0);
  const good = await checkInTurns('drills', rows, inTurns);
  clearInterval(beat);
  expect([...good]).toEqual([...expected]);
  expect(inTurns).toEqual(once);
  expect(inTurns).toHaveLength(4);
  expect(turns).toBeGreaterThan(0);
});

it.each([0, 499, 500, 501, 1700])('an adapter gives all of %d rows, in the order of their keys', async (count) => {
  const adapter = await openIdbAdapter({ name: 'x', indexedDB: new IDBFactory() });
  const rows = rowsOf(count);
  await adapter.write([...rows].map(([key, value]) => ({ table: 'drills', do: 'put', key, value })));
  expect([...((await adapter.read(['drills'])).get('drills') ?? [])]).toEqual([...rows]);
  adapter.close();
});

it('what another tab changes while this one reads is read once more', async () => {
  const inner = createMemoryAdapter();
  let hear: (changed: readonly Table[]) => void = () => undefined;
  let isFirst = true;
  const adapter = {
    ...inner,
    async read(from: readonly Table[]): Promise<Found> {
      const found = await inner.read(from);
      if (isFirst && from.includes('drills')) {
        isFirst = false;
        await inner.write([{ table: 'drills', do: 'put', key: 'a', value: record }]);
        hear(['drills']);
      }
      return found;
    },
  };
  const channel = {
    tell: () => undefined,
    close: () => undefined,
    hear(fn: typeof hear) {
      hear = fn;
    },
  };
  const store = createLocalStore({ adapter, channel, now: () => '2026-11-25T06:00:00Z' });
  expect((await store.journal()).drills).toEqual([record]);
});
