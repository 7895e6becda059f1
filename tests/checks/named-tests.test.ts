import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
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

/** All that can be named: files of ours by their last name, and every word of the code. */
function known(): { files: Set<string>; words: Set<string> } {
  const files = ['packages', 'apps', 'tests', 'scripts', 'docs'].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => !/node_modules|[/\\]?dist[/\\]/.test(name))
      .map((name) => join(folder, name)),
  );
  const code = files.filter((name) => /\.(ts|mjs|css|html|json)$/.test(name) && !/fixtures|sprites/.test(name));
  const texts = [
    ...code.map((name) => readFileSync(join(root, name), 'utf8')),
    readFileSync(`${root}package.json`, 'utf8'),
  ];
  return {
    files: new Set(files.map((name) => basename(name))),
    words: new Set(texts.flatMap((text) => text.match(/[A-Za-z_$][\w$]*/g) ?? [])),
  };
}

/** Names in code style that a page has and the code has not: `aFunction`, `ITS_LIMIT`, `its-test.test.ts`. */
function unknownNames(text: string, { files, words }: ReturnType<typeof known>): string[] {
  const named = [...text.replace(/^```.*?^```$/gms, '').matchAll(/`([^`\n]+)`/g)].map(([, name = '']) => name);
  return named.filter((name) =>
    /^[\w-]+(\.test|\.browser)?\.ts$/.test(name)
      ? !files.has(name)
      : /^[A-Za-z]+[a-z][A-Z]\w*(\(|$)|^[A-Z]+_[A-Z_]+$/.test(name) && !words.has(/^\w+/.exec(name)![0]),
  );
}

it('every name in code style on a page is one of the code or of a file', () => {
  const there = known();
  // The page of changes tells what was tried and thrown away.
  const pages = readdirSync(`${root}docs`).filter((name) => name.endsWith('.md') && name !== 'changes.md');
  const lost = [...pages.map((name) => `docs/${name}`), 'README.md', 'DEVELOPERS.md'].flatMap((page) =>
    unknownNames(readFileSync(root + page, 'utf8'), there).map((name) => `${page}: ${name}`),
  );
  expect(there.words.size).toBeGreaterThan(5000);
  expect(lost).toEqual([]);
});

it('turns red for a name that is gone', () => {
  const there = { files: new Set(['walk.ts']), words: new Set(['layOut', 'FOLD_VERSION']) };
  expect(unknownNames('`walk.ts` has `layOut(it)` and `FOLD_VERSION`.', there)).toEqual([]);
  expect(unknownNames('`run.test.ts` has `layIn(it)` and `OLD_VERSION`.', there)).toHaveLength(3);
});

it('turns red for a test that is gone and for a row without one', () => {
  expect(missing('`tests/journeys/gone.test.ts`')).toEqual(['tests/journeys/gone.test.ts']);
  expect(unshown('| who | shown by |\n| a | nothing |')).toEqual(['| a | nothing |']);
  expect(unshown('| who | shown by |\n| a | `tests/checks/named-tests.test.ts` |')).toEqual([]);
});
