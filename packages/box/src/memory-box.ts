import type { BoxAdapter, BoxFile } from './box-adapter.ts';
import { troubled } from './box-trouble.ts';

/**
 * A box that lasts as long as the page: for tests and for trying out.
 * @returns an empty box, and what lies in it, for a test to tamper with.
 */
export function createMemoryBox(): BoxAdapter & { readonly files: Map<string, BoxFile> } {
  const files = new Map<string, BoxFile>();
  let turn = 0;
  return {
    files,
    list: async () => ({
      ok: true,
      value: [...files].map(([name, { content, mark }]) => ({ name, bytes: content.byteLength, mark })),
    }),
    get: async (name) => {
      const file = files.get(name);
      return file === undefined
        ? troubled('missing', name)
        : { ok: true, value: { ...file, content: file.content.slice() } };
    },
    put: async (name, content) => {
      turn += 1;
      const mark = String(turn);
      files.set(name, { content: content.slice(), mark });
      return { ok: true, value: mark };
    },
    remove: async (name) => {
      files.delete(name);
      return { ok: true, value: undefined };
    },
  };
}
