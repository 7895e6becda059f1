import { type IDBPDatabase, openDB } from 'idb';

const HAND_OVERS = 'handOvers';

/**
 * The hand-overs that a coach keeps on this device: one for each archer, as text. They are in no backup and no journal, for they are not the coach's own.
 * They lie in a database of their own, so that an archer's start reads none of them. Each method rejects with the browser's error where nothing can be kept.
 */
export interface SquadShelf {
  /** @returns the texts, in order of the archers' ids */
  read(): Promise<readonly string[]>;
  /** Keeps a hand-over in the place of any other one of the archer. */
  keep(archerId: string, text: string): Promise<void>;
  /** Takes an archer's hand-over away, if there is one. */
  remove(archerId: string): Promise<void>;
  /** Calls back at every change made here, with the archer and the text kept now. @returns a function that ends it */
  subscribe(fn: (archerId: string, text?: string) => void): () => void;
}

/**
 * Opens the shelf when it is first needed.
 * @param name of the database
 * @returns the shelf
 */
export function createSquadShelf(name = 'larkhold-squad'): SquadShelf {
  const listeners = new Set<(archerId: string, text?: string) => void>();
  const withShelf = async <T>(work: (shelf: IDBPDatabase) => Promise<T>): Promise<T> => {
    const shelf = await openDB(name, 1, { upgrade: (database) => void database.createObjectStore(HAND_OVERS) });
    // Closed after each use: nothing then blocks a later version in another tab.
    return work(shelf).finally(() => shelf.close());
  };
  const tell = (archerId: string, text?: string): void => {
    for (const fn of [...listeners]) fn(archerId, text);
  };
  return {
    read: () =>
      withShelf(async (shelf) =>
        (await shelf.getAll(HAND_OVERS)).filter((one): one is string => typeof one === 'string'),
      ),
    async keep(archerId, text) {
      await withShelf((shelf) => shelf.put(HAND_OVERS, text, archerId));
      tell(archerId, text);
    },
    async remove(archerId) {
      await withShelf((shelf) => shelf.delete(HAND_OVERS, archerId));
      tell(archerId);
    },
    subscribe(fn) {
      listeners.add(fn);
      return () => listeners.delete(fn);
    },
  };
}
