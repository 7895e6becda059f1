import { wrap } from 'idb';

/**
 * Reads a database as it is, whatever its version and whether or not its values are good: the way out when a migration failed or a newer app
 * has changed it. Changes nothing.
 * @param name the database's name.
 * @param indexedDB the browser's own unless a test says otherwise.
 * @returns each table's values by key; empty if there is no such database. Rejects with the browser's error.
 */
export async function dumpDatabase(
  name: string,
  indexedDB: IDBFactory = globalThis.indexedDB,
): Promise<Record<string, Record<string, unknown>>> {
  const known = await indexedDB.databases();
  if (!known.some((one) => one.name === name)) return {}; // opening it would make it
  const raw = await new Promise<IDBDatabase>((resolve, reject) => {
    const request = indexedDB.open(name);
    request.addEventListener('success', () => resolve(request.result));
    request.addEventListener('error', () => reject(request.error));
  });
  const database = wrap(raw);
  const dump: Record<string, Record<string, unknown>> = {};
  for (const table of database.objectStoreNames) {
    const [keys, values] = await Promise.all([database.getAllKeys(table), database.getAll(table)]);
    dump[table] = Object.fromEntries(keys.map((key, index) => [String(key), values[index]]));
  }
  database.close();
  return dump;
}
