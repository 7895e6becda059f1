import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { findGluedWords } from './find-glued-words.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
/** Names of states, keys and classes, and what a machine reads: not words, though they look like some. */
const names = new Set([
  ...['no folder', 'not allowed', 'not said', '50 and over', 'lighter week', 'lighter before the competition'],
  ...['Larkhold', 'Tab', 'Escape', 'Clap', 'Space', 'Enter', 'Gamepad:', 'main begin', 'large long', 'focus short'],
  ...['(prefers-color-scheme: light)', '(forced-colors: active)', '3x10 hold 30 rest 2x, set rest 2m'],
  'a[href], button, input, select, textarea, summary, [tabindex="0"]',
]);
const rooms = ['apps/web/src', 'packages/runner/src', 'packages/ui/src'];

it('keeps every sentence in packages/words: none is left elsewhere', () => {
  // A text that is new here belongs in packages/words: docs/words.md.
  const found = findGluedWords(root, rooms).filter(({ text }) => !names.has(text));
  expect(found.map(({ file, line, text }) => `${file}:${line}: ${text}`)).toEqual([]);
});

it('says every message somewhere', () => {
  const sources = ['apps', 'packages'].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter(
        (name) => /\.(ts|tsx)$/.test(name) && !/node_modules|[/\\]dist[/\\]|words[/\\]src[/\\](en|de)[/\\]/.test(name),
      )
      .map((name) => readFileSync(join(root, folder, name), 'utf8')),
  );
  const text = sources.join('\n');
  const literals = new Set(text.match(/[`'][a-z][A-Za-z]*\.[A-Za-z0-9]+(?=['`])/g)?.map((one) => one.slice(1)));
  const begun = [...new Set(text.match(/`[a-z][A-Za-z]*\.[A-Za-z]*\$\{/g)?.map((one) => one.slice(1, -2)))];
  const english = join(root, 'packages/words/src/en');
  const keys = readdirSync(english).flatMap((name) =>
    [...readFileSync(join(english, name), 'utf8').matchAll(/^ {2}'([a-z][A-Za-z]*\.[A-Za-z0-9]+)':/gm)].map(
      ([, key = '']) => key,
    ),
  );
  expect(keys.length).toBeGreaterThan(500);
  const unsaid = keys.filter((key) => !literals.has(key) && !begun.some((start) => key.startsWith(start)));
  expect(unsaid).toEqual([]);
});
