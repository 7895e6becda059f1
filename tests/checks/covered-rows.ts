import { readFileSync } from 'node:fs';

/** Words of so many letters and more say what a row is about; they are compared by their beginnings, so that "killed" is "kills" too. */
const STEM = 4;
/** Words that any test may have. */
const COMMON = new Set([
  'that',
  'with',
  'from',
  'than',
  'this',
  'what',
  'when',
  'each',
  'same',
  'here',
  'every',
  'once',
  'says',
]);
const LEAST = 2;

/**
 * Rows of a page's tables whose named tests speak of something else. It can't read a test as a person does; it sees a row that names the wrong file.
 * @param page the page's text
 * @param root the folder that paths are from, with a slash
 * @returns the first cells of those rows, and the words of them that were found
 */
export function uncoveredRows(page: string, root: string): string[] {
  const rows = page.split('\n').filter((line) => /^\| (?!---|fault \||who \|)/.test(line));
  return rows.flatMap((row) => {
    const cells = row.split('|').slice(1, -1);
    const named = [...(cells.at(-1) ?? '').matchAll(/`([^`]+\.ts)`/g)].map(([, path = '']) => path);
    const stems = new Set(
      [
        ...cells
          .slice(0, -1)
          .join(' ')
          .matchAll(/[A-Za-z]{4,}/g),
      ]
        .map(([word]) => word.toLowerCase())
        .filter((word) => !COMMON.has(word))
        .map((word) => word.slice(0, STEM)),
    );
    const text = named.map((path) => readFileSync(root + path, 'utf8').toLowerCase()).join('\n');
    const found = [...stems].filter((stem) => text.includes(stem));
    return found.length >= Math.min(LEAST, stems.size) ? [] : [`${cells[0]?.trim()}: ${found.join(', ')}`];
  });
}
