import 'fake-indexeddb/auto';
import type { DayEntry } from '@larkhold/engine';
import { IDBFactory } from 'fake-indexeddb';
import { describe, expect, it } from 'vitest';
import { openIdbAdapter } from './idb-adapter.ts';
import { createLocalStore } from './local-store.ts';
import { createMemoryAdapter } from './memory-adapter.ts';
import { migrationSteps } from './migrations.ts';
import { openStore } from './open-store.ts';
import { dumpDatabase } from './raw-dump.ts';
import { runningOf } from './running-rows.ts';
import { record } from './trial/trial-record.ts';
import { StoreError } from './trouble.ts';

const now = (): string => '2026-05-01T10:00:00.000Z';
const day: DayEntry = { date: '2026-05-01', feel: 3, editedAt: '2026-05-01T09:00:00Z' };
const running = {
  program: 'Slow mornings',
  prescription: { programTitle: '', date: '2026-05-01', blocks: [], reasons: [], cautions: [], durationMs: 0 },
  snapshot: {},
  startedAt: '2026-05-01T08:00:00Z',
};

/** An adapter over memory that fails when told to, with the error a browser would give. */
function createFaultyAdapter() {
  const inner = createMemoryAdapter();
  let fault: string | undefined;
  const check = (): void => {
    if (fault !== undefined) throw new DOMException('injected', fault);
  };
  return {
    inner,
    breakWith: (name: string | undefined) => {
      fault = name;
    },
    adapter: {
      ...inner,
      where: 'disk' as const,
      write: async (...args: Parameters<typeof inner.write>) => {
        check();
        return inner.write(...args);
      },
      update: async (...args: Parameters<typeof inner.update>) => {
        check();
        return inner.update(...args);
      },
    },
  };
}

describe('a full disk', () => {
  it('says so, keeps the value in memory, and writes it when there is room again', async () => {
    const faulty = createFaultyAdapter();
    const store = createLocalStore({ adapter: faulty.adapter, now });
    faulty.breakWith('QuotaExceededError');
    await expect(store.writeRep(record, running)).rejects.toMatchObject({ name: 'StoreError', kind: 'full' });
    expect(store.trouble?.kind).toBe('full');
    expect((await store.journal()).drills).toEqual([record]);
    expect(await store.running()).toEqual(running);
    expect((await store.integrityReport()).unwrittenCount).toBe(3);
    faulty.breakWith(undefined);
    await store.putDay(day);
    expect(store.trouble).toBeUndefined();
    const onDisk = await faulty.inner.read(['drills', 'days', 'single']);
    expect([...(onDisk.get('drills')?.values() ?? [])]).toEqual([record]);
    expect(onDisk.get('days')?.size).toBe(1);
    expect(runningOf(onDisk)).toEqual(running);
  });

  it('does not write an old value over a newer one afterwards', async () => {
    const faulty = createFaultyAdapter();
    const store = createLocalStore({ adapter: faulty.adapter, now });
    faulty.breakWith('QuotaExceededError');
    await expect(store.putDay({ ...day, feel: 1 })).rejects.toThrow(StoreError);
    await expect(store.putDay({ ...day, feel: 2 })).rejects.toThrow(StoreError);
    faulty.breakWith(undefined);
    await store.putDay({ ...day, feel: 5 });
    expect((await faulty.inner.read(['days'])).get('days')?.get(day.date)).toMatchObject({ feel: 5 });
  });

  it('still takes a small change when the earlier ones have no room, and never undoes it with an older value', async () => {
    const faulty = createFaultyAdapter();
    const sizes: number[] = [];
    const adapter = {
      ...faulty.adapter,
      write: async (...args: Parameters<typeof faulty.adapter.write>) => {
        const size = args[0].filter(({ table }) => table !== 'lately').length;
        sizes.push(size);
        if (size > 1) throw new DOMException('injected', 'QuotaExceededError');
        return faulty.adapter.write(...args);
      },
    };
    const store = createLocalStore({ adapter, now });
    await expect(store.putDrills([record, { ...record, id: 'b' }])).rejects.toMatchObject({ kind: 'full' });
    await store.putDrill({ ...record, effort: 5 });
    expect(store.trouble?.kind).toBe('full'); // b waits still
    await store.putDrill({ ...record, id: 'b', effort: 4 });
    expect(store.trouble).toBeUndefined();
    expect(sizes).toEqual([2, 2, 1, 1]);
    const onDisk = (await faulty.inner.read(['drills'])).get('drills');
    expect(onDisk?.get('a')).toMatchObject({ effort: 5 });
    expect(onDisk?.get('b')).toMatchObject({ effort: 4 });
  });

  it('writes what had no room before along with a merge, and never over what the merge brought', async () => {
    const { adapter, inner, breakWith } = createFaultyAdapter();
    const store = createLocalStore({ adapter, now });
    breakWith('QuotaExceededError');
    await store.putDay({ ...day, feel: 2, editedAt: '2026-05-01T10:00:00Z' }).catch(() => {});
    await store.putDay({ ...day, date: '2026-05-02' }).catch(() => {});
    breakWith(undefined);
    const newer = { ...day, feel: 5, editedAt: '2026-05-01T11:00:00Z' };
    await store.mergeInto({ drills: [], days: [newer], weeks: [] });
    expect(store.trouble).toBeUndefined();
    const onDisk = createLocalStore({ adapter: inner, now });
    expect((await onDisk.journal()).days).toEqual([newer, { ...day, date: '2026-05-02' }]);
    await store.putDrill(record);
    expect((await createLocalStore({ adapter: inner, now }).journal()).days[0]).toEqual(newer);
  });

  it('keeps a merge that did not reach the disk', async () => {
    const faulty = createFaultyAdapter();
    const store = createLocalStore({ adapter: faulty.adapter, now });
    await store.putDrill(record);
    faulty.breakWith('QuotaExceededError');
    await expect(store.mergeInto({ drills: [{ ...record, id: 'b' }], days: [day], weeks: [] })).rejects.toThrow(
      StoreError,
    );
    expect((await store.journal()).drills.map((one) => one.id)).toEqual(['a', 'b']);
  });
});

describe('no disk', () => {
  const openWith = (open: () => IDBOpenDBRequest, patienceMs = 50) =>
    openStore({ indexedDB: Object.assign(new IDBFactory(), { open }), patienceMs });

  it.each([
    ['SecurityError', 'refused'],
    ['InvalidStateError', 'refused'],
    ['VersionError', 'newer'],
    ['UnknownError', 'damaged'],
    ['QuotaExceededError', 'full'],
  ])('%s while opening: works in memory and says %s', async (name, kind) => {
    const store = await openWith(() => {
      throw new DOMException('injected', name);
    });
    expect(store.where).toBe('memory');
    expect(store.trouble?.kind).toBe(kind);
    await store.putDay(day);
    expect((await store.journal()).days).toEqual([day]);
    expect(store.trouble?.kind).toBe(kind);
  });

  it('a browser that never answers: works in memory', async () => {
    const store = await openWith(() => new EventTarget() as IDBOpenDBRequest);
    expect(store.trouble?.kind).toBe('blocked');
  });

  it('a browser that answers too late: the connection is closed, so that it blocks nobody', async () => {
    const request = new EventTarget() as IDBOpenDBRequest;
    const store = await openWith(() => request, 10);
    expect(store.where).toBe('memory');
    let closed = 0;
    Object.assign(request, { result: { close: () => (closed += 1) } });
    request.dispatchEvent(new Event('success'));
    expect(closed).toBe(1);
  });

  it('a database of a newer version: works in memory and leaves it alone', async () => {
    const factory = new IDBFactory();
    const newer = await openIdbAdapter({ name: 'x', indexedDB: factory, steps: [...migrationSteps, () => {}] });
    await newer.write([{ table: 'days', do: 'put', key: day.date, value: day }]);
    newer.close();
    const store = await openStore({ name: 'x', indexedDB: factory });
    expect(store.trouble?.kind).toBe('newer');
    expect(await dumpDatabase('x', factory)).toMatchObject({ days: { '2026-05-01': day } });
  });
});

describe('a lost connection', () => {
  it('is opened again, and nothing is lost', async () => {
    const factory = new IDBFactory();
    const connections: IDBDatabase[] = [];
    const open = factory.open.bind(factory);
    const watched = Object.assign(factory, {
      open: (name: string, version?: number) => {
        const request = open(name, version);
        request.addEventListener('success', () => connections.push(request.result as unknown as IDBDatabase));
        return request;
      },
    });
    const store = await openStore({ name: 'x', indexedDB: watched });
    await store.putDay(day);
    connections[0]?.close();
    await store.writeRep(record, running);
    expect(connections).toHaveLength(2);
    expect(store.trouble).toBeUndefined();
    expect((await store.journal()).drills).toEqual([record]);
    store.close();
  });
});

describe('what a disk cannot hold', () => {
  it('is refused before it is tried, and later writes are not held up by it', async () => {
    const store = await openStore({ name: 'x', indexedDB: new IDBFactory() });
    const circle: Record<string, unknown> = {};
    circle.self = circle;
    await expect(store.writeRep(record, { ...running, snapshot: circle })).rejects.toThrow(TypeError);
    expect((await store.journal()).drills).toEqual([]);
    await store.writeRep(record, { ...running, snapshot: { step: 3, gone: () => 1 } });
    expect((await store.running())?.snapshot).toEqual({ step: 3 });
    store.close();
  });

  it('leaves no half of a rep behind when the transaction fails', async () => {
    const adapter = await openIdbAdapter({ name: 'x', indexedDB: new IDBFactory() });
    const write = adapter.write([
      { table: 'drills', do: 'put', key: 'a', value: record },
      { table: 'single', do: 'put', key: 'running', value: () => 'no clone of this' },
    ]);
    await expect(write).rejects.toThrow();
    expect((await adapter.read(['drills'])).get('drills')?.size).toBe(0);
    adapter.close();
  });
});

describe('a newer version in another tab', () => {
  const openNewer = (factory: IDBFactory) =>
    openIdbAdapter({ name: 'x', indexedDB: factory, patienceMs: 200, steps: [...migrationSteps, () => {}] });

  it('gets the database; the old tab keeps what it writes in memory and says so', async () => {
    const factory = new IDBFactory();
    const old = await openStore({ name: 'x', indexedDB: factory });
    await old.putDay(day);
    (await openNewer(factory)).close();
    await expect(old.putDay({ ...day, feel: 5 })).rejects.toMatchObject({ kind: 'newer' });
    expect((await old.journal()).days[0]?.feel).toBe(5);
    expect(old.trouble?.kind).toBe('newer');
    old.close();
  });

  it('waits while a drill runs, and gets it when the drill is over', async () => {
    const factory = new IDBFactory();
    const old = await openStore({ name: 'x', indexedDB: factory });
    await old.putRunning(running);
    await expect(openNewer(factory)).rejects.toMatchObject({ kind: 'blocked' });
    await old.writeRep(record, running);
    await old.putRunning(undefined);
    const newer = await openNewer(factory);
    expect((await newer.read(['drills'])).get('drills')?.size).toBe(1);
    newer.close();
    old.close();
  });
});

describe('damage', () => {
  it('sets a damaged value aside, reports it, and keeps it as it was found', async () => {
    const factory = new IDBFactory();
    (await openStore({ name: 'x', indexedDB: factory })).close();
    const bad = { ...record, id: 'bad', reps: 'gone' };
    const adapter = await openIdbAdapter({ name: 'x', indexedDB: factory });
    await adapter.write([
      { table: 'drills', do: 'put', key: 'a', value: record },
      { table: 'drills', do: 'put', key: 'bad', value: bad },
      { table: 'single', do: 'put', key: 'kit', value: { bow: 'compound', soundLevel: 'loud' } },
      { table: 'single', do: 'put', key: 'running', value: null },
    ]);
    adapter.close();
    const store = await openStore({ name: 'x', indexedDB: factory });
    expect((await store.journal()).drills).toEqual([record]);
    expect(await store.kit()).toMatchObject({ bow: 'compound', soundLevel: 0.7 });
    expect(await store.running()).toBeUndefined();
    const report = await store.integrityReport();
    expect(report.setAside.map((one) => `${one.table}/${one.key}`).sort()).toEqual([
      'drills/bad',
      'single/kit',
      'single/running',
    ]);
    expect(report.setAside.find((one) => one.key === 'bad')).toMatchObject({
      value: bad,
      message: expect.stringContaining('reps'),
    });
    store.close();
    const again = await openStore({ name: 'x', indexedDB: factory });
    expect((await again.integrityReport()).setAside).toHaveLength(3);
    expect((await again.kit()).bow).toBe('compound');
    again.close();
  });

  it.each(['mergeInto', 'replaceJournal'] as const)(
    '%s does not write over a damaged value of the same id',
    async (verb) => {
      const inner = createMemoryAdapter();
      const bad = { ...record, reps: 'gone' };
      await inner.write([{ table: 'drills', do: 'put', key: 'a', value: bad }]);
      const store = createLocalStore({ adapter: inner, now });
      await store[verb]({ drills: [record], days: [], weeks: [] });
      expect((await store.journal()).drills).toEqual([record]);
      expect((await store.integrityReport()).setAside).toMatchObject([{ table: 'drills', key: 'a', value: bad }]);
    },
  );

  it('a failed migration leaves the old data readable', async () => {
    const factory = new IDBFactory();
    const old = await openStore({ name: 'x', indexedDB: factory });
    await old.putDrill(record);
    old.close();
    const failing = openIdbAdapter({
      name: 'x',
      indexedDB: factory,
      steps: [
        ...migrationSteps,
        async (_database, transaction) => {
          await transaction.objectStore('drills').clear();
          throw new Error('step 2 fails');
        },
      ],
    });
    await expect(failing).rejects.toThrow('step 2 fails');
    expect(await dumpDatabase('x', factory)).toMatchObject({ drills: { a: record } });
    const again = await openStore({ name: 'x', indexedDB: factory });
    expect((await again.journal()).drills).toEqual([record]);
    again.close();
  });
});
