import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { builtInPrograms } from './built-in-programs.ts';
import { nextPrograms } from './next-programs.ts';

const page = readFileSync(new URL('../../../../docs/built-in-programs.md', import.meta.url), 'utf8');
const rows = [...page.matchAll(/^\| (.*?) \|(.*)\|(.*)\|(.*)\|$/gm)].slice(2);

it('the page of built-in programs names each of them, in the order of the rack, with what comes after', () => {
  expect(rows.map(([, title]) => title)).toEqual(builtInPrograms.map(({ title }) => title));
  for (const [index, program] of builtInPrograms.entries()) {
    const after = nextPrograms(program).map(({ title }) => title);
    expect(rows[index]?.[4]?.trim(), program.title).toBe(after.join(', '));
  }
});
