import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** The rows of all tables of a page that name no test, or one that does not exist. */
function wrongRows(page: string): string[] {
  const rows = page
    .split('\n')
    .filter((line) => line.startsWith('| ') && !line.startsWith('| ---') && !line.startsWith('| fault |'));
  if (rows.length === 0) return ['no rows'];
  return rows.filter((row) => {
    const cells = row.split('|').slice(1, -1);
    const named = [...(cells.at(-1) ?? '').matchAll(/`([^`]+)`/g)].map(([, path = '']) => path);
    const areTests = named.every((path) => /\.(test|browser)\.ts$/.test(path) && existsSync(root + path));
    return cells.length !== 5 || named.length === 0 || !areTests;
  });
}

it('every fault of the page is shown by a test that exists', () => {
  expect(wrongRows(readFileSync(`${root}docs/faults.md`, 'utf8'))).toEqual([]);
});

it('turns red for a row without a test, or with one that is gone', () => {
  expect(wrongRows('| a | b | c | d | none |')).toHaveLength(1);
  expect(wrongRows('| a | b | c | d | `tests/journeys/gone.test.ts` |')).toHaveLength(1);
  expect(wrongRows('| a | b | c | d | `docs/faults.md` |')).toHaveLength(1);
  expect(wrongRows('| a | b | c | d | `tests/checks/faults.test.ts` |')).toEqual([]);
});
