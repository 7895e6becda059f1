import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const room = fileURLToPath(new URL('..', import.meta.url));
const analyzer = fileURLToPath(import.meta.resolve('@custom-elements-manifest/analyzer/cem.js'));

interface Manifest {
  modules: { declarations: { tagName?: string; events?: { name: string }[]; members?: { name: string }[] }[] }[];
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
