import type { Table } from './adapter.ts';
import { openIdbAdapter } from './idb-adapter.ts';
import type { Kit } from './kit.ts';
import { createLocalStore } from './local-store.ts';
import { createMemoryAdapter } from './memory-adapter.ts';
import type { Store } from './store.ts';
import type { TabChannel } from './table-keeper.ts';
import { describeTrouble, troubleOf } from './trouble.ts';

/** Where a store is. */
export interface OpenStoreOptions {
  /** The database's name; the app's own unless a test says otherwise. */
  name?: string;
  /** The browser's own unless a test says otherwise. */
  indexedDB?: IDBFactory;
  /** Milliseconds to wait for a browser that does not answer, or a tab that does not let go. */
  patienceMs?: number;
  /** What the kit of a first run holds besides its defaults. */
  firstKit?: Partial<Kit>;
}

const now = (): string => new Date().toISOString();

/**
 * Opens the store. It never rejects: where the disk can't be had, the store works in memory and `trouble` says why.
 * @param options see `OpenStoreOptions`.
 * @returns the store.
 */
export async function openStore(options: OpenStoreOptions = {}): Promise<Store> {
  const name = options.name ?? 'larkhold';
  const { firstKit } = options;
  let isRunning = false;
  let isWanted = false;
  try {
    const indexedDB = options.indexedDB ?? globalThis.indexedDB;
    if (indexedDB === undefined) throw new DOMException('this browser has no IndexedDB', 'SecurityError');
    const adapter = await openIdbAdapter({
      name,
      indexedDB,
      patienceMs: options.patienceMs,
      // An update never interrupts a drill: the newer tab waits, or works in memory, until this one is through.
      letGo: () => {
        isWanted = isRunning;
        return !isRunning;
      },
    });
    return createLocalStore({
      adapter,
      channel: openTabChannel(name),
      now,
      firstKit,
      onRunning: (runs) => {
        isRunning = runs;
        if (!runs && isWanted) adapter.close();
      },
    });
  } catch (error) {
    const trouble = describeTrouble(troubleOf(error, true));
    return createLocalStore({ adapter: createMemoryAdapter(), trouble, now, firstKit });
  }
}

function openTabChannel(name: string): TabChannel | undefined {
  if (typeof BroadcastChannel === 'undefined') return undefined;
  const channel = new BroadcastChannel(`${name}-store`);
  return {
    tell: (changed) => channel.postMessage(changed),
    hear: (fn) => {
      channel.addEventListener('message', (event: MessageEvent<unknown>) => {
        if (Array.isArray(event.data)) fn(event.data as Table[]);
      });
    },
    close: () => channel.close(),
  };
}
