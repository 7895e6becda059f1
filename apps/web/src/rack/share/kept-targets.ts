import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { type FileTarget, targetOf } from './file-target.ts';

/** Handles are good in this browser only: they are kept apart from the store, in no backup and no file. */
interface Handles extends DBSchema {
  handles: { key: string; value: FileSystemFileHandle };
}

const name = 'larkhold-files';

function open(): Promise<IDBPDatabase<Handles>> {
  return openDB<Handles>(name, 1, {
    upgrade: (database) => {
      database.createObjectStore('handles');
    },
  });
}

/**
 * The file that a program was last saved to, also after the page was left.
 * @param key the program's id, or its title where it has none
 * @returns the file; undefined where none was chosen, or the browser keeps nothing
 */
export async function keptTarget(key: string): Promise<FileTarget | undefined> {
  const handle = await withHandles((database) => database.get('handles', key));
  return handle && targetOf(handle);
}

/**
 * Keeps the file that a program was saved to. Where the browser keeps nothing, it is good until the page is left.
 * @param key the program's id, or its title where it has none
 * @param target the file
 */
export async function keepTarget(key: string, target: FileTarget): Promise<void> {
  await withHandles((database) => database.put('handles', target.handle, key));
}

/**
 * Forgets the file of a program: it is gone, or may not be written.
 * @param key the program's id, or its title where it has none
 */
export async function forgetTarget(key: string): Promise<void> {
  await withHandles((database) => database.delete('handles', key));
}

async function withHandles<Result>(
  work: (database: IDBPDatabase<Handles>) => Promise<Result>,
): Promise<Result | undefined> {
  let database: IDBPDatabase<Handles> | undefined;
  try {
    database = await open();
    return await work(database);
  } catch {
    return undefined; // no disk, or a handle that can't be kept: saving asks for a file again, and nothing is lost
  } finally {
    database?.close();
  }
}
