import { createBackup, formatBackup, type Store } from '@larkhold/store';
import { type BackupFolder, dropOlder, isAllowed, writeInto } from './backup-folder.ts';

/** Backups of this device that stay in the folder. */
const KEPT_COUNT = 10;

/** How writing a backup to the folder ended. */
export type FolderBackupEnd = 'saved' | 'not allowed' | 'no folder' | 'failed';

/** Backups into a folder that the archer chose. */
export interface FolderBackup {
  /** The folder's name, if one is chosen on this device. */
  folderName(): Promise<string | undefined>;
  /** Lets the archer choose a folder. @returns its name; undefined when it was left */
  choose(): Promise<string | undefined>;
  /** Writes today's backup. @param asks a press may let the browser ask for leave. */
  save(asks: boolean): Promise<FolderBackupEnd>;
  /** Goes back to no folder. Backups that are there stay. */
  forget(): Promise<void>;
}

/** What backups into a folder need. */
export interface FolderBackupParts {
  store: Store;
  pickFolder: () => Promise<BackupFolder | undefined>;
  newId: () => string;
  /** The local day and the instant, ISO 8601. */
  today: () => string;
  instant: () => string;
}

/** What is kept of the folder. The mark is in this device's files, so that two devices can share a folder. */
interface Kept {
  handle: BackupFolder;
  mark: string;
}

/**
 * Makes backups into a folder possible.
 * @param parts what they need
 * @returns what chooses the folder and writes
 */
export function createFolderBackup({ store, pickFolder, newId, today, instant }: FolderBackupParts): FolderBackup {
  const kept = async (): Promise<Kept | undefined> => {
    const found: unknown = await store.backupFolder().catch(() => undefined);
    return isKept(found) ? found : undefined;
  };
  return {
    folderName: async () => (await kept())?.handle.name,
    async choose() {
      const handle = await pickFolder();
      if (!handle) return undefined;
      const mark =
        (await kept())?.mark ??
        newId()
          .replace(/[^a-z0-9]/gi, '')
          .slice(0, 6);
      await store.putBackupFolder({ handle, mark });
      return handle.name;
    },
    async save(asks) {
      const folder = await kept();
      if (!folder) return 'no folder';
      try {
        if (!(await isAllowed(folder.handle, asks))) return 'not allowed';
        const name = `larkhold-${folder.mark}-${today()}.backup.json`;
        await writeInto(folder.handle, name, formatBackup(await createBackup(store, instant())));
      } catch {
        return 'failed';
      }
      // The backup is there; old ones that cannot be removed do no harm.
      await dropOlder(folder.handle, folder.mark, KEPT_COUNT).catch(() => undefined);
      return 'saved';
    },
    forget: () => store.putBackupFolder(undefined).catch(() => undefined),
  };
}

function isKept(found: unknown): found is Kept {
  if (typeof found !== 'object' || found === null || !('handle' in found) || !('mark' in found)) return false;
  const { handle, mark } = found;
  return typeof mark === 'string' && typeof handle === 'object' && handle !== null && 'getFileHandle' in handle;
}
