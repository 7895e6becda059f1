import { readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import {
  type BoxAdapter,
  type BoxAnswer,
  type BoxTroubleKind,
  LARGEST_FILE_BYTES,
  readBoxFileName,
} from '@larkhold/box';

/** What the system's errors mean for a box. */
const kinds: Readonly<Record<string, BoxTroubleKind>> = {
  ...{ ENOENT: 'gone', ENOTDIR: 'gone', EACCES: 'refused', EPERM: 'refused', EROFS: 'refused' },
  ...{ ENOSPC: 'full', EDQUOT: 'full' },
};

/**
 * A box in a folder of this machine. A file is written beside and moved into its place, so that whatever syncs the folder never picks up half of one.
 * @param folder where it is
 * @returns the box; troubles come back as values
 */
export function createNodeFolderBox(folder: string): BoxAdapter {
  const markOf = async (name: string): Promise<{ bytes: number; mark: string }> => {
    const { size, mtimeMs } = await stat(join(folder, name));
    return { bytes: size, mark: `${Math.round(mtimeMs)}-${size}` };
  };
  return {
    list: () =>
      guarded(async () => {
        const found = await readdir(folder, { withFileTypes: true });
        const files = found.filter((entry) => entry.isFile() && readBoxFileName(entry.name) !== undefined);
        return {
          ok: true,
          value: await Promise.all(files.map(async ({ name }) => ({ name, ...(await markOf(name)) }))),
        };
      }),
    get: (name) =>
      guarded(async () => {
        const names = await readdir(folder);
        if (!names.includes(name)) return { ok: false, trouble: { kind: 'missing', file: name } };
        const { bytes, mark } = await markOf(name);
        if (bytes > LARGEST_FILE_BYTES) return { ok: false, trouble: { kind: 'enormous', file: name } };
        return { ok: true, value: { content: new Uint8Array(await readFile(join(folder, name))), mark } };
      }),
    put: (name, content) =>
      guarded(async () => {
        const beside = join(folder, `.${name}.${process.pid}.part`);
        await writeFile(beside, content);
        await rename(beside, join(folder, name));
        return { ok: true, value: (await markOf(name)).mark };
      }),
    remove: (name) =>
      guarded(async () => {
        await rm(join(folder, name), { force: true });
        return { ok: true, value: undefined };
      }),
  };
}

async function guarded<T>(work: () => Promise<BoxAnswer<T>>): Promise<BoxAnswer<T>> {
  try {
    return await work();
  } catch (cause) {
    const code = cause instanceof Error && 'code' in cause ? String(cause.code) : '';
    return { ok: false, trouble: { kind: kinds[code] ?? 'fault' } };
  }
}
