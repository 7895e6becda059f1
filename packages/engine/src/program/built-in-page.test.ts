import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { builtInPrograms } from './built-in-programs.ts';
import { nextPrograms } from './next-programs.ts';

const page = readFileSync(new URL('../../../../docs/built-in-programs.md', import.meta.url), 'utf8');
const rows = [...page.matchAll(/^\| (?!program|---)(.+) \|$/gm)].map(([, row = '']) =>
  row.split('|').map((cell) => cell.trim()),
);

it('the page of built-in programs has each of them, in order, with what it begins with and what comes after it', () => {
  const said = builtInPrograms.map((program) => {
    const { sets, reps, hold } = program.blocks[0]!;
    const begins = program.kind === 'test' ? '' : `${sets > 1 ? `${sets} × ` : ''}${reps} × ${hold} s`;
    return [
      program.title,
      begins,
      nextPrograms(program)
        .map(({ title }) => title)
        .join(', '),
    ];
  });
  const isTest = new Set(builtInPrograms.filter(({ kind }) => kind === 'test').map(({ title }) => title));
  expect(
    rows.map(([title = '', begins = '', , after = '']) => [
      title,
      isTest.has(title) ? '' : /^[\d × ]+ s/.exec(begins)?.[0],
      after,
    ]),
  ).toEqual(said);
});
