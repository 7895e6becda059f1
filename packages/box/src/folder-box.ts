import { type BoxAdapter, type BoxAnswer, type BoxEntry, LARGEST_FILE_BYTES } from './box-adapter.ts';
import { readBoxFileName } from './box-file-name.ts';
import { troubled } from './box-trouble.ts';

/**
 * A box in a folder that the archer has chosen (File System Access API); whoever syncs that folder syncs the journal. A file is written beside and moved into
 * its place where the browser can do that, so that a sync never picks up half of one.
 * @param folder the folder's handle, with leave to read and write.
 * @returns the box.
 */
export function createFolderBox(folder: FileSystemDirectoryHandle): BoxAdapter {
  const markOf = (file: File): string => `${file.lastModified}-${file.size}`;
  const fileOf = async (name: string): Promise<File | undefined> => {
    try {
      return await (await folder.getFileHandle(name)).getFile();
    } catch (error) {
      if (nameOf(error) === 'NotFoundError' && (await isThere(folder))) return undefined;
      throw error;
    }
  };
  return {
    list: () =>
      guarded(async () => {
        const entries: BoxEntry[] = [];
        for await (const [name, handle] of folder.entries()) {
          if (handle.kind !== 'file' || readBoxFileName(name) === undefined) continue;
          const file = await (handle as FileSystemFileHandle).getFile();
          entries.push({ name, bytes: file.size, mark: markOf(file) });
        }
        return { ok: true, value: entries };
      }),
    get: (name) =>
      guarded(async () => {
        const file = await fileOf(name);
        if (file === undefined) return troubled('missing', name);
        if (file.size > LARGEST_FILE_BYTES) return troubled('enormous', name);
        return { ok: true, value: { content: new Uint8Array(await file.arrayBuffer()), mark: markOf(file) } };
      }),
    put: (name, content) =>
      guarded(async () => {
        // `createWritable` writes beside the file and swaps at `close`: all of it or none.
        const writable = await (await folder.getFileHandle(name, { create: true })).createWritable();
        try {
          await writable.write(content);
          await writable.close();
        } catch (error) {
          await writable.abort().catch(() => undefined);
          throw error;
        }
        const now = await fileOf(name);
        return now === undefined ? troubled('gone', name) : { ok: true, value: markOf(now) };
      }),
    remove: (name) =>
      guarded(async () => {
        if ((await fileOf(name)) !== undefined) await folder.removeEntry(name);
        return { ok: true, value: undefined };
      }),
  };
}

/** Names of errors as the File System Standard gives them. */
async function guarded<T>(work: () => Promise<BoxAnswer<T>>): Promise<BoxAnswer<T>> {
  try {
    return await work();
  } catch (error) {
    const name = nameOf(error);
    if (name === 'NotAllowedError' || name === 'SecurityError') return troubled('refused');
    if (name === 'QuotaExceededError') return troubled('full');
    return troubled(name === 'NotFoundError' ? 'gone' : 'fault');
  }
}

/** A missing file and a missing folder throw the same error. */
async function isThere(folder: FileSystemDirectoryHandle): Promise<boolean> {
  try {
    await folder.keys().next();
    return true;
  } catch {
    return false;
  }
}

function nameOf(error: unknown): string {
  return typeof error === 'object' && error !== null && 'name' in error ? String(error.name) : '';
}
