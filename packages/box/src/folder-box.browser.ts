import { afterAll, describe, expect, it } from 'vitest';
import { createFolderBox } from './folder-box.ts';
import { describeBox } from './trial/box-acceptance.ts';

const PHONE = `phone-1-${'a'.repeat(26)}.age`;
let count = 0;
/** A folder of the browser's own: the same interface as one that the archer chooses. */
async function openFolder(): Promise<{
  root: FileSystemDirectoryHandle;
  folder: FileSystemDirectoryHandle;
  name: string;
}> {
  count += 1;
  const root = await navigator.storage.getDirectory();
  const name = `box-${count}`;
  return { root, name, folder: await root.getDirectoryHandle(name, { create: true }) };
}
afterAll(async () => {
  const root = await navigator.storage.getDirectory();
  for (let one = 1; one <= count; one += 1)
    await root.removeEntry(`box-${one}`, { recursive: true }).catch(() => undefined);
});

describe('a box in a folder', () => {
  describeBox(async () => createFolderBox((await openFolder()).folder));

  it('leaves other files of the folder alone, and what a sync left half-done or doubled', async () => {
    const { folder } = await openFolder();
    for (const name of ['letter.txt', `${PHONE}.crswap`, `phone-1-${'a'.repeat(26)} (conflicted copy).age`]) {
      await folder.getFileHandle(name, { create: true });
    }
    await folder.getDirectoryHandle(`tablet-1-${'a'.repeat(26)}.age`, { create: true });
    expect(await createFolderBox(folder).list()).toEqual({ ok: true, value: [] });
  });

  it('that was thrown away says that it is gone, and nothing throws', async () => {
    const { root, folder, name } = await openFolder();
    const box = createFolderBox(folder);
    await box.put(PHONE, new Uint8Array([1]));
    await root.removeEntry(name, { recursive: true });
    const gone = { ok: false, trouble: { kind: 'gone' } };
    for (const answer of [
      await box.list(),
      await box.get(PHONE),
      await box.put(PHONE, new Uint8Array([1])),
      await box.remove(PHONE),
    ]) {
      expect(answer).toMatchObject(gone);
    }
  });

  it.each([
    ['NotAllowedError', 'refused'],
    ['QuotaExceededError', 'full'],
    ['InvalidStateError', 'fault'],
  ])('whose disk answers %s: it is reported, and the file that was there stays', async (name, kind) => {
    const { folder } = await openFolder();
    await createFolderBox(folder).put(PHONE, new Uint8Array([1, 2]));
    // A handle whose files cannot be written, as a browser gives one when its leave has lapsed or the disk is full.
    const failing = new Proxy(folder, {
      get(target, verb) {
        if (verb === 'getFileHandle') {
          return async (file: string, options: FileSystemGetFileOptions) => {
            if (options?.create !== true) return target.getFileHandle(file);
            return {
              createWritable: async () => ({
                write: async () => Promise.reject(new DOMException('no', name)),
                abort: async () => undefined,
              }),
            };
          };
        }
        const value = Reflect.get(target, verb);
        return typeof value === 'function' ? value.bind(target) : value;
      },
    });
    expect(await createFolderBox(failing).put(PHONE, new Uint8Array([3]))).toMatchObject({
      ok: false,
      trouble: { kind },
    });
    expect(await createFolderBox(folder).get(PHONE)).toMatchObject({
      ok: true,
      value: { content: new Uint8Array([1, 2]) },
    });
  });
});
