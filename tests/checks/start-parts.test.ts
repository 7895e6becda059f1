import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { startParts } from '../../apps/web/start-parts.ts';

const pageOf = (name: string): string =>
  fileURLToPath(new URL(`../../apps/web/${name}.html`, import.meta.url)).replaceAll('\\', '/');

/** A small app: what each module imports, and what it fetches later. */
const imported: Record<string, { now: string[]; later?: string[] }> = {
  [pageOf('index')]: { now: ['/wiring.ts'] },
  [pageOf('about')]: { now: ['/about.ts'] },
  '/wiring.ts': { now: ['/place.ts', '/drill.ts'], later: ['/box.ts'] },
  '/about.ts': { now: ['/drill.ts'] },
  '/box.ts': { now: ['/place.ts'] },
  '/place.ts': { now: ['/drill.ts'] },
  '/drill.ts': { now: ['/words/src/fetch-texts.ts', '/sentences.ts'] },
  '/words/src/fetch-texts.ts': { now: [], later: ['/english.ts'] },
  '/english.ts': { now: ['/sentences.ts'] },
  '/sentences.ts': { now: [] },
};
const modules = {
  getModuleInfo: (id: string) => {
    const found = imported[id];
    return found ? { importedIds: found.now, dynamicallyImportedIds: found.later ?? [] } : null;
  },
};
const partOf = (id: string): string | undefined => {
  const groups = [...startParts.groups].sort((a, b) => b.priority - a.priority);
  return groups.map(({ name }) => name(id, modules)).find((name) => name !== null) ?? undefined;
};

it('what waits at its top level shares no file with what it waits for', () => {
  // The wiring waits for the box, which imports the places; the words wait for the texts, which import the sentences.
  expect(partOf('/wiring.ts')).toBeUndefined();
  expect(partOf(pageOf('index'))).toBeUndefined();
  expect(partOf('/place.ts')).toBe('app');
  expect(partOf('/words/src/fetch-texts.ts')).toBe('drill');
  expect(partOf('/sentences.ts')).toBe('sentences');
});

it('the page about Larkhold loads nothing of the app alone, and what is fetched later is in no part of the start', () => {
  expect(partOf('/drill.ts')).toBe('drill');
  for (const id of ['/about.ts', pageOf('about'), '/box.ts', '/english.ts']) expect(partOf(id)).toBeUndefined();
});
