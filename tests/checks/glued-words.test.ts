import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { findGluedWords } from './find-glued-words.ts';
import left from './glued-words-left.json' with { type: 'json' };

const root = fileURLToPath(new URL('../..', import.meta.url));
/** Names of states, keys and classes, and what a machine reads: not words, though they look like some. */
const names = new Set([
  ...['no folder', 'not allowed', 'not said', '50 and over', 'lighter week', 'lighter before the competition'],
  ...['Larkhold', 'Tab', 'Escape', 'Clap', 'Space', 'Enter', 'Gamepad:', 'main begin', 'large long', 'focus short'],
  ...['(prefers-color-scheme: light)', '(forced-colors: active)', '3x10 hold 30 rest 2x, set rest 2m'],
  'a[href], button, input, select, textarea, summary, [tabindex="0"]',
]);
const rooms = ['apps/web/src', 'packages/runner/src', 'packages/ui/src'];

it('keeps sentences in packages/words: what is left elsewhere is named, and only shrinks', () => {
  const found = new Map<string, string[]>();
  for (const { file, line, text } of findGluedWords(root, rooms)) {
    if (names.has(text)) continue;
    found.set(file, [...(found.get(file) ?? []), `${line}: ${text}`]);
  }
  const allowed = new Map(Object.entries(left));
  const total = [...found.values()].reduce((sum, texts) => sum + texts.length, 0);
  console.log(
    `${total} texts outside of packages/words, in ${found.size} files; see tests/checks/glued-words-left.json`,
  );
  // A text that is new here belongs in packages/words: docs/words.md.
  const more = [...found].filter(([file, texts]) => texts.length > (allowed.get(file) ?? 0));
  expect(Object.fromEntries(more)).toEqual({});
  // A file that has fewer now, or none: lower its number.
  const fewer = [...allowed].filter(([file, count]) => (found.get(file)?.length ?? 0) < count - 2);
  expect(Object.fromEntries(fewer.map(([file]) => [file, found.get(file)?.length ?? 0]))).toEqual({});
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
