import { readFileSync } from 'node:fs';
import { type TableName, tableColumns } from '@larkhold/engine';
import { expect, it } from 'vitest';

const page = readFileSync(new URL('../../docs/journal-files.md', import.meta.url), 'utf8');

it.each(Object.keys(tableColumns) as TableName[])(
  'the page of journal files says what each column of %s holds',
  (table) => {
    const rows = tableColumns[table].map(({ name, says }) => `| ${table} | ${name} | ${says} |`);
    expect(rows.filter((row) => !page.includes(row))).toEqual([]);
  },
);
