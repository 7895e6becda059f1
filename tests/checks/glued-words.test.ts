import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { findGluedWords } from './find-glued-words.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
/** Names of states, keys and classes, and what a machine reads: not words, though they look like some. */
const names = new Set([
  ...['no folder', 'not allowed', 'not said', '50 and over', 'lighter week', 'lighter before the competition'],
  ...['may be cleared', 'larkhold box path 1', 'larkhold box key 1', 'Usage:', 'Options:', 'Commands:'],
  ...['Larkhold', 'Tab', 'Escape', 'Clap', 'Space', 'Enter', 'Gamepad:', 'main begin', 'large long', 'focus short'],
  ...['(prefers-color-scheme: light)', '(forced-colors: active)', '3x10 hold 30 rest 2x, set rest 2m'],
  // Names to be typed at a prompt, in a row: the same in every language.
  ...["targets.join(', ')", "tables.join(', ')", "choices.join(', ')", "Object.keys(languages).join(', ')"],
  'a[href], button, input, select, textarea, summary, [tabindex="0"]',
]);
const rooms = [
  ...[
    'apps/web/src',
    'apps/cli/src',
    'packages/runner/src',
    'packages/ui/src',
    'packages/box/src',
    'packages/store/src',
  ],
];

it('keeps every sentence in packages/words: none is left elsewhere', () => {
  // A text that is new here belongs in packages/words: docs/words.md.
  const found = findGluedWords(root, rooms).filter(({ text }) => !names.has(text));
  expect(found.map(({ file, line, text }) => `${file}:${line}: ${text}`)).toEqual([]);
});

it('finds a sentence in each of the ways in which it could be glued, and none in what is a message', () => {
  const folder = mkdtempSync(join(tmpdir(), 'larkhold-glued-'));
  const found = (code: string): string[] => {
    // '#' stands for the sign that would begin an expression in this file too.
    writeFileSync(join(folder, 'src', 'one.ts'), code.replaceAll('#', '$'));
    return findGluedWords(folder, ['src']).map(({ text }) => text);
  };
  try {
    mkdirSync(join(folder, 'src'));
    expect(found("say('rep.held', { n });")).toEqual([]);
    expect(found("around.print('The box is full.');")).toEqual(['The box is full.']);
    expect(found('around.print(`#{n} of #{all} held`);')).toEqual(['{} of {} held']);
    expect(found('const words = `#{day} · pain`;')).toEqual(['{} · pain']);
    expect(found("const words = say('a.b') + ' and then rest';")).toEqual(['and then rest']);
    expect(found("const words = titles.join(', ');")).toEqual(["titles.join(', ')"]);
    expect(found('const words = n.toLocaleString();')).toEqual(['n.toLocaleString()']);
    expect(found("const words = new Intl.ListFormat('en');")).toEqual(["new Intl.ListFormat('en')"]);
    expect(found("const ending = n === 1 ? '' : 's';")).toEqual(["n === 1 ? '' : 's'"]);
    expect(found("const path = keys.join('/');")).toEqual([]);
    expect(found('const words = html`<p>Rest #{ms} ms</p>`;')).toEqual(['Rest {} ms']);
    expect(found('const words = html`<button aria-label="Stop now"></button>`;')).toEqual(['Stop now']);
    expect(found('const words = `#{say("a.b")} #{say("c.d")}`;')).toEqual(['say("a.b") say("c.d")']);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
