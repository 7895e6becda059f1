import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Files that a page names and that are not there; short names, as `app.test.ts` alone, are not looked for. */
function missing(page: string): string[] {
  return [...page.matchAll(/`((?:tests|packages|apps|scripts|docs)\/[\w./-]+\.(?:ts|mjs|css|md|html|svg))`/g)]
    .map(([, path = '']) => path)
    .filter((path) => !existsSync(root + path) && !path.includes('PLACE'));
}

/** Links of a page into this repository that lead nowhere. */
function missingLinks(page: string, text: string): string[] {
  return [...text.matchAll(/\]\((?!https?:|#)([^)#]+)/g)]
    .map(([, path = '']) => path)
    .filter((path) => !existsSync(join(root, dirname(page), path)));
}

/** Rows of the page's tables that name no test in their last cell. */
function unshown(page: string): string[] {
  const rows = page.split('\n').filter((line) => line.startsWith('| ') && !line.startsWith('| ---'));
  return rows.filter((row, index) => index > 0 && !/`[^`]+\.(?:test|browser)\.ts`/.test(row.split('|').at(-2) ?? ''));
}

it('every test that the threat model names is there, and every row names one', () => {
  const page = readFileSync(`${root}docs/threat-model.md`, 'utf8');
  expect(missing(page)).toEqual([]);
  expect(unshown(page)).toEqual([]);
});

it('every file of ours that a page names with its folder is there, and so is every page that it links', () => {
  const pages = [
    ...readdirSync(`${root}docs`).map((name) => `docs/${name}`),
    'README.md',
    'DEVELOPERS.md',
    'CONTRIBUTING.md',
  ];
  const lost = pages
    .filter((page) => page.endsWith('.md'))
    .flatMap((page) => {
      const text = readFileSync(root + page, 'utf8');
      return [...missing(text), ...missingLinks(page, text)].map((path) => `${page}: ${path}`);
    });
  expect(lost).toEqual([]);
});

it('turns red for a test that is gone and for a row without one', () => {
  expect(missing('`tests/journeys/gone.test.ts`')).toEqual(['tests/journeys/gone.test.ts']);
  expect(unshown('| who | shown by |\n| a | nothing |')).toEqual(['| a | nothing |']);
  expect(unshown('| who | shown by |\n| a | `tests/checks/named-tests.test.ts` |')).toEqual([]);
});
