import { fileURLToPath } from 'node:url';

/** What the bundler tells of modules. */
interface Modules {
  getModuleInfo(id: string): { importedIds: readonly string[]; dynamicallyImportedIds: readonly string[] } | null;
}
/** Who needs a module before anything can be seen. */
interface Needs {
  app: ReadonlySet<string>;
  about: ReadonlySet<string>;
  texts: ReadonlySet<string>;
}

const kept = new WeakMap<object, Needs>();

/**
 * How the built app is cut: what it loads before anything can be seen lies in three files and not in fifty. Each file more costs a start some
 * milliseconds, most of all on a slow machine. One of them is what the page about Larkhold needs as well.
 *
 * Two parts of the app wait at their top level, and a file that waits for what imports it never ends. The wiring waits for the way to the box, which
 * it fetches: it stays in the page's own file, which nobody imports. (The page has then one script; of several that import each other WebKit
 * does not wait for the one that waits.) The words wait for the texts of a language: what these import is apart.
 */
export const startParts = {
  // In this order: a group takes along what its modules import.
  groups: [
    { name: partOf('sentences', (id, { app, texts }) => app.has(id) && texts.has(id)), priority: 3 },
    { name: partOf('drill', (id, { app, about }) => app.has(id) && about.has(id)), priority: 2 },
    { name: partOf('app', (id, { app, about }) => app.has(id) && !about.has(id)), priority: 1 },
  ],
};

function partOf(name: string, isIn: (id: string, needs: Needs) => boolean) {
  return (id: string, modules: Modules): string | null => (isIn(id, needsOf(modules)) ? name : null);
}

function needsOf(modules: Modules): Needs {
  const known = kept.get(modules);
  if (known) return known;
  const pageOf = (name: string): string =>
    fileURLToPath(new URL(`./${name}.html`, import.meta.url)).replaceAll('\\', '/');
  const app = importsOf([pageOf('index')], modules);
  const own = [pageOf('index'), ...(modules.getModuleInfo(pageOf('index'))?.importedIds ?? [])];
  const texts = [...app].find((id) => id.endsWith('/words/src/fetch-texts.ts'));
  if (!texts) throw new Error('no module fetches the texts of a language');
  const needs = {
    app: new Set([...app].filter((id) => !own.includes(id))),
    about: importsOf([pageOf('about')], modules),
    texts: importsOf(modules.getModuleInfo(texts)?.dynamicallyImportedIds ?? [], modules),
  };
  kept.set(modules, needs);
  return needs;
}

/** Modules, and all that they import; not what is fetched later. */
function importsOf(ids: readonly string[], modules: Modules): ReadonlySet<string> {
  const found = new Set<string>();
  const left = [...ids];
  for (let id = left.pop(); id !== undefined; id = left.pop()) {
    if (found.has(id)) continue;
    found.add(id);
    left.push(...(modules.getModuleInfo(id)?.importedIds ?? []));
  }
  return found;
}
