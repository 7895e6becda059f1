import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Files that a page names and that are not there; short names, as `app.test.ts` alone, are not looked for. */
function missing(page: string): string[] {
  return [...page.matchAll(/`((?:tests|packages|apps)\/[\w./-]+\.ts)`/g)]
    .map(([, path = '']) => path)
    .filter((path) => !existsSync(root + path));
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

it('every test that the page on accessibility names is there', () => {
  expect(missing(readFileSync(`${root}docs/accessibility.md`, 'utf8'))).toEqual([]);
});

it('turns red for a test that is gone and for a row without one', () => {
  expect(missing('`tests/journeys/gone.test.ts`')).toEqual(['tests/journeys/gone.test.ts']);
  expect(unshown('| who | shown by |\n| a | nothing |')).toEqual(['| a | nothing |']);
  expect(unshown('| who | shown by |\n| a | `tests/checks/named-tests.test.ts` |')).toEqual([]);
});
