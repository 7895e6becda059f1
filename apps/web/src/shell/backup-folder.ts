/**
 * A folder that the archer chose. What the browser's own types do not know yet is written down here.
 * @source WICG, File System Access, draft of 2024: permissions of handles, and `showDirectoryPicker`; Chromium only so far
 */
export interface BackupFolder extends FileSystemDirectoryHandle {
  keys(): AsyncIterableIterator<string>;
  queryPermission?(wish: { mode: 'readwrite' }): Promise<PermissionState>;
  requestPermission?(wish: { mode: 'readwrite' }): Promise<PermissionState>;
}

declare global {
  interface Window {
    showDirectoryPicker?(options: { id: string; mode: 'readwrite' }): Promise<BackupFolder>;
  }
}

/**
 * Lets the archer choose a folder.
 * @returns undefined where this browser has no such thing; else what asks, and gives nothing when the archer leaves it
 */
export function folderPicker(): (() => Promise<BackupFolder | undefined>) | undefined {
  if (typeof window.showDirectoryPicker !== 'function') return undefined;
  return async () => {
    try {
      return await window.showDirectoryPicker?.({ id: 'larkhold-backup', mode: 'readwrite' });
    } catch {
      return undefined;
    }
  };
}

/**
 * Tells whether the folder may be written to.
 * @param folder which
 * @param asks lets the browser ask the archer; only a press may do that
 * @returns false while it may not
 */
export async function isAllowed(folder: BackupFolder, asks: boolean): Promise<boolean> {
  const wish = { mode: 'readwrite' } as const;
  // A folder of the page's own needs no leave.
  if (!folder.queryPermission) return true;
  if ((await folder.queryPermission(wish)) === 'granted') return true;
  return asks && (await folder.requestPermission?.(wish)) === 'granted';
}

/**
 * Writes a file into a folder. The file that was there stays until the new one is whole: `close` puts it in its place.
 * @param folder where
 * @param name the file's name
 * @param text what is in it
 * @throws Error when what was written is not what is there; rejects with the browser's error when it cannot be written
 */
export async function writeInto(folder: BackupFolder, name: string, text: string): Promise<void> {
  const file = await folder.getFileHandle(name, { create: true });
  const blob = new Blob([text], { type: 'application/json' });
  const stream = await file.createWritable();
  try {
    await stream.write(blob);
    await stream.close();
  } catch (error) {
    await stream.abort().catch(() => undefined);
    throw error;
  }
  const { size } = await file.getFile();
  if (size !== blob.size) throw new Error(`${name}: expected ${blob.size} bytes, got ${size}`);
}

/**
 * Takes away older backups of this device, and nothing else.
 * @param folder where
 * @param mark what is in the names of this device's backups
 * @param keptCount how many stay
 */
export async function dropOlder(folder: BackupFolder, mark: string, keptCount: number): Promise<void> {
  const names: string[] = [];
  for await (const name of folder.keys()) {
    if (name.startsWith(`larkhold-${mark}-`) && /-\d{4}-\d\d-\d\d\.backup\.json$/.test(name)) names.push(name);
  }
  for (const name of names.sort().slice(0, -keptCount)) await folder.removeEntry(name);
}
