import { say } from '@larkhold/words';
import type { Surroundings } from './surroundings.ts';

/**
 * Saves what is on the disk as it is, for a store that can't be read.
 * @param around the disk's rows, the day and where files go
 * @returns what prevented it, in words; undefined where a file was saved
 */
export async function saveDump({
  dumpStored,
  today,
  saveFile,
}: Pick<Surroundings, 'dumpStored' | 'today' | 'saveFile'>): Promise<string | undefined> {
  try {
    const dump = await dumpStored?.();
    if (!dump || Object.keys(dump).length === 0) return say('trouble.nothingOnDisk');
    saveFile(`larkhold-${today()}.dump.json`, `${JSON.stringify(dump, null, 2)}\n`);
    return undefined;
  } catch {
    return say('trouble.diskUnread');
  }
}
