import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const room = fileURLToPath(new URL('..', import.meta.url));
const analyzer = fileURLToPath(import.meta.resolve('@custom-elements-manifest/analyzer/cem.js'));

interface Manifest {
  modules: {
    path: string;
    declarations: {
      tagName?: string;
      events?: { name: string }[];
      members?: { name: string }[];
      cssParts?: { name: string }[];
      cssProperties?: { name: string }[];
    }[];
  }[];
}

const read = (path: string): Manifest => JSON.parse(readFileSync(path, 'utf8'));

test('the manifest is what the analyzer finds in the sources; `npm run manifest -w packages/runner` writes it again', () => {
  const folder = mkdtempSync(join(tmpdir(), 'larkhold-manifest-'));
  execFileSync(process.execPath, [analyzer, 'analyze', '--quiet', '--outdir', relative(room, folder)], { cwd: room });
  const found = read(join(folder, 'custom-elements.json'));
  rmSync(folder, { recursive: true });
  expect(read(join(room, 'custom-elements.json'))).toEqual(found);
});

test('the manifest names the four elements, their events and how a drill is begun', () => {
  const elements = read(join(room, 'custom-elements.json')).modules.flatMap((module) => module.declarations);
  const named = elements.map(({ tagName, events }) => [tagName, events?.map(({ name }) => name) ?? []]);
  expect(named).toEqual([
    ['lark-after', ['lark-after-done']],
    ['lark-drill', ['lark-begin', 'lark-rep', 'lark-change', 'lark-end', 'lark-notice']],
    ['lark-glance', []],
    ['lark-learn', ['lark-learned']],
  ]);
  const drill = elements.find(({ tagName }) => tagName === 'lark-drill');
  expect(drill?.members?.map(({ name }) => name)).toEqual(expect.arrayContaining(['prescription', 'begin', 'view']));
  // What stays inside an element is nobody's to rely on.
  expect(JSON.stringify(elements)).not.toContain('"#');
});

test('the manifest tells of events, parts and custom properties what the sources do, each once', () => {
  const sourceOf = (path: string) => readFileSync(join(room, path.replace(/^dist\/(.*)\.js$/, 'src/$1.ts')), 'utf8');
  const look = readFileSync(join(room, 'src/glance-look.ts'), 'utf8');
  const once = (found: Iterable<RegExpExecArray>) =>
    [...new Set([...found].flatMap(([, names]) => names!.split(', ')))].sort();
  const namesOf = (told: readonly { name: string }[] = []) => told.map(({ name }) => name).sort();
  for (const { path, declarations } of read(join(room, 'custom-elements.json')).modules) {
    const source = sourceOf(path);
    const told = declarations.find(({ tagName }) => source.includes(`@customElement('${tagName}')`));
    expect([path, namesOf(told?.cssParts)]).toEqual([path, once(source.matchAll(/\b(?:export)?parts?="([\w, ]+)"/g))]);
    const said = once(source.matchAll(/\b(?:drillEvent|CustomEvent(?:<\w+>)?)\(\s*'([\w-]+)'/g));
    expect([path, namesOf(told?.events)]).toEqual([path, said]);
    expect([path, namesOf(told?.cssProperties)]).toEqual([path, once(look.matchAll(/var\((--lark-[\w-]+)/g))]);
  }
});
