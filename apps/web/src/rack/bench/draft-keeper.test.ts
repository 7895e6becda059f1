import { expect, test } from 'vitest';
import { createEmptyDraft } from './draft.ts';
import { createDraftKeeper } from './draft-keeper.ts';

const draft = createEmptyDraft('6d1a3a0c-52b7-4b8e-8d60-7f1f6a1b2c3d');

function memoryStorage() {
  const kept = new Map<string, string>();
  return {
    kept,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
    removeItem: (key: string) => void kept.delete(key),
  };
}

test('a draft is kept by its address and let go', () => {
  const storage = memoryStorage();
  const keeper = createDraftKeeper(() => storage);
  keeper.keep('new', draft);
  expect(keeper.read('new')).toEqual(draft);
  expect(keeper.read('other')).toBeUndefined();
  keeper.keep('new', undefined);
  expect(storage.kept.size).toBe(0);
});

test('what is kept and is no draft is passed over', () => {
  const storage = memoryStorage();
  const keeper = createDraftKeeper(() => storage);
  for (const text of ['{', 'null', '[]', '{"file":{}}', '{"file":{"blocks":1},"blockKeys":[]}']) {
    storage.setItem('larkhold-draft:new', text);
    expect(keeper.read('new')).toBeUndefined();
  }
  // keys that do not fit the blocks are made again
  storage.setItem('larkhold-draft:new', JSON.stringify({ ...draft, blockKeys: [1, 2, 3] }));
  expect(keeper.read('new')?.blockKeys).toEqual([0]);
});

test('a browser that refuses storage costs nothing but the keeping', () => {
  const keeper = createDraftKeeper(() => {
    throw new DOMException('refused', 'SecurityError');
  });
  expect(() => keeper.keep('new', draft)).not.toThrow();
  expect(keeper.read('new')).toBeUndefined();
});
