import { type IDBPDatabase, wrap } from 'idb';
import type { Adapter, Change, Found, Table, WantedRows } from './adapter.ts';
import { type MigrationStep, migrationSteps, type UpgradeTransaction } from './migrations.ts';
import { StoreError } from './trouble.ts';

/** How to open the database. */
export interface IdbOptions {
  name: string;
  indexedDB: IDBFactory;
  /** One a version; the app's own unless a test says otherwise. */
  steps?: readonly MigrationStep[];
  /** Milliseconds to wait for a browser that does not answer, or a tab that does not let go. */
  patienceMs?: number;
  /** A newer version of the app wants the database. Return false to keep it for now, and call `close` when done with it. */
  letGo?: () => boolean;
}

/**
 * Opens the database and brings it up to date.
 * @param options see `IdbOptions`.
 * @returns an adapter on it. Rejects with the browser's error, or a `StoreError`.
 */
export async function openIdbAdapter(options: IdbOptions): Promise<Adapter> {
  let closedFor: StoreError | undefined;
  let database: IDBPDatabase | undefined;
  const open = async (): Promise<IDBPDatabase> => {
    if (closedFor !== undefined) throw closedFor;
    if (database !== undefined) return database;
    const opened = await openDatabase(options);
    opened.addEventListener('versionchange', () => {
      if (options.letGo?.() === false) return;
      closedFor = new StoreError('newer');
      opened.close();
    });
    // The browser may close it by itself (disk pulled, site data cleared); the next call opens it again.
    opened.addEventListener('close', () => {
      database = undefined;
    });
    database = opened;
    return opened;
  };
  await open();
  const begin = async (from: readonly Table[], mode: 'readonly' | 'readwrite', durable = false) => {
    try {
      return beginTransaction(await open(), from, mode, durable);
    } catch (error) {
      // A connection can be gone without a word (a suspended phone); once more with a new one.
      if (closedFor !== undefined || !(error instanceof DOMException) || error.name !== 'InvalidStateError')
        throw error;
      database = undefined;
      return beginTransaction(await open(), from, mode, durable);
    }
  };

  const read = async (from: readonly Table[]): Promise<Found> => {
    if (from.length === 0) return new Map();
    const transaction = await begin(from, 'readonly');
    const found = await readTables(from, (name) => transaction.objectStore(name));
    await transaction.done;
    return found;
  };
  const readFew = async (
    from: readonly Table[],
    counted: readonly Table[],
    wanted: (found: Found) => WantedRows,
  ): Promise<{ found: Found; counts: ReadonlyMap<Table, number> }> => {
    const transaction = await begin([...new Set([...from, ...counted])], 'readonly');
    const tableOf = (name: Table) => transaction.objectStore(name);
    const [whole, counts] = await Promise.all([
      readTables(from, tableOf),
      Promise.all(counted.map(async (name) => [name, await tableOf(name).count()] as const)),
    ]);
    const some = await Promise.all(
      [...wanted(whole)].map(async ([name, keys]) => {
        const values: unknown[] = await Promise.all(keys.map((key) => tableOf(name).get(key)));
        const rows = keys.map((key, at) => [key, values[at]] as const);
        return [name, new Map(rows.filter(([, value]) => value !== undefined))] as const;
      }),
    );
    await transaction.done;
    return { found: new Map([...whole, ...some]), counts: new Map(counts) };
  };
  const update = async (from: readonly Table[], decide: (found: Found) => Change[]): Promise<Change[]> => {
    const transaction = await begin(from, 'readwrite');
    const done = transaction.done;
    done.catch(() => {}); // it is awaited below; a failed request rejects both
    try {
      const changes = decide(await readTables(from, (name) => transaction.objectStore(name)));
      await applyTo(changes, (name) => transaction.objectStore(name));
      await done;
      return changes;
    } catch (error) {
      await abort(transaction);
      throw transaction.error ?? error;
    }
  };
  const write = async (changes: readonly Change[], durable = false): Promise<void> => {
    if (changes.length === 0) return;
    const touched = [...new Set(changes.map((change) => change.table))];
    const transaction = await begin(touched, 'readwrite', durable);
    const done = transaction.done;
    done.catch(() => {});
    try {
      await applyTo(changes, (name) => transaction.objectStore(name));
      await done;
    } catch (error) {
      await abort(transaction);
      throw transaction.error ?? error;
    }
  };
  const close = (): void => {
    closedFor ??= new StoreError('newer');
    database?.close();
  };
  return { where: 'disk', read, readFew, write, update, close };
}

function beginTransaction(
  database: IDBPDatabase,
  from: readonly Table[],
  mode: 'readonly' | 'readwrite',
  durable = false,
) {
  return database.transaction([...from], mode, { durability: durable ? 'strict' : 'default' });
}

interface ReadableTable {
  getAllKeys(query: IDBKeyRange | null, count: number): Promise<IDBValidKey[]>;
  getAll(query: IDBKeyRange | null, count: number): Promise<unknown[]>;
}
/** Rows that are asked for at once: the page is busy while the browser hands them over, and ten years are many. */
const ROWS_AT_ONCE = 500;
interface WritableTable {
  put?: (value: unknown, key: string) => Promise<unknown>;
  delete?: (key: string) => Promise<void>;
  clear?: () => Promise<void>;
}

async function readTables(from: readonly Table[], tableOf: (name: Table) => ReadableTable): Promise<Found> {
  return new Map(
    await Promise.all(
      from.map(async (name): Promise<[Table, Map<string, unknown>]> => {
        const table = tableOf(name);
        const rows = new Map<string, unknown>();
        let range: IDBKeyRange | null = null;
        for (;;) {
          const [keys, values]: [IDBValidKey[], unknown[]] = await Promise.all([
            table.getAllKeys(range, ROWS_AT_ONCE),
            table.getAll(range, ROWS_AT_ONCE),
          ]);
          for (const [index, key] of keys.entries()) rows.set(String(key), values[index]);
          const last = keys.at(-1);
          if (last === undefined || keys.length < ROWS_AT_ONCE) return [name, rows];
          range = IDBKeyRange.lowerBound(last, true);
        }
      }),
    ),
  );
}

async function applyTo(changes: readonly Change[], tableOf: (name: Table) => WritableTable): Promise<void> {
  const requests: (Promise<unknown> | undefined)[] = [];
  for (const change of changes) {
    const table = tableOf(change.table);
    const request =
      change.do === 'put'
        ? table.put?.(change.value, change.key)
        : change.do === 'remove'
          ? table.delete?.(change.key)
          : table.clear?.();
    request?.catch(() => {}); // the transaction fails with it; a later change that throws must not leave it unheard
    requests.push(request);
  }
  await Promise.all(requests);
}

/** A transaction left alone after a failed request would commit what came before it. */
async function abort(transaction: { abort(): void; done: Promise<void> }): Promise<void> {
  try {
    transaction.abort();
  } catch {
    // It is over already.
  }
  await transaction.done.catch(() => {});
}

function openDatabase(options: IdbOptions): Promise<IDBPDatabase> {
  const { name, indexedDB, steps = migrationSteps, patienceMs = 5000 } = options;
  return new Promise((resolve, reject) => {
    let given = false;
    let failed: unknown;
    const request = indexedDB.open(name, steps.length);
    const giveUp = setTimeout(() => {
      given = true;
      reject(new StoreError('blocked'));
    }, patienceMs);
    request.addEventListener('upgradeneeded', (event) => {
      const raw = request.transaction;
      if (raw === null) return;
      const transaction: unknown = wrap(raw); // idb's type for it does not fit a version change
      wrap(raw).done.catch(() => {}); // the request reports it
      const upgrade = async (): Promise<void> => {
        for (const step of steps.slice(event.oldVersion)) {
          await step(wrap(request.result), transaction as UpgradeTransaction);
        }
      };
      upgrade().catch((error: unknown) => {
        failed = error;
        raw.abort();
      });
    });
    request.addEventListener('success', () => {
      clearTimeout(giveUp);
      // Too late: the page already works in memory, and an open connection would block the next one.
      if (given) request.result.close();
      else resolve(wrap(request.result));
    });
    request.addEventListener('error', (event) => {
      event.preventDefault(); // Firefox reports an unhandled one on the window
      clearTimeout(giveUp);
      reject(failed ?? request.error);
    });
  });
}
