/** `kept`: the browser won't clear it by itself; `may be cleared`: it may, when room runs out; `unknown`: the browser doesn't say. */
export type Persistence = 'kept' | 'may be cleared' | 'unknown';

/**
 * Asks the browser to keep the store when room runs out. Call it when there is something worth keeping, after the first drill say; some
 * browsers ask the archer.
 * @param storage the browser's own unless a test says otherwise.
 * @returns how it is afterwards; never rejects.
 */
export async function askForPersistence(
  storage: Pick<StorageManager, 'persist' | 'persisted'> | undefined = globalThis.navigator?.storage,
): Promise<Persistence> {
  if (typeof storage?.persist !== 'function') return 'unknown';
  try {
    return (await storage.persisted()) || (await storage.persist()) ? 'kept' : 'may be cleared';
  } catch {
    return 'unknown';
  }
}
