import type { Table } from './adapter.ts';
import type { SetAside } from './integrity-report.ts';
import { nextTask } from './next-task.ts';
import { checkTable } from './stored-rows.ts';

/** Rows that are checked before the page gets a turn. */
const CHECKED_AT_ONCE = 400;

/**
 * As `checkTable`; a table of many rows lets the page do other work in between.
 * @param table where they were found.
 * @param rows by key, as found.
 * @param damaged takes what could not be read.
 * @returns the good ones by key, defaults filled in.
 */
export async function checkInTurns(
  table: Table,
  rows: ReadonlyMap<string, unknown>,
  damaged: SetAside[],
): Promise<Map<string, unknown>> {
  if (rows.size <= CHECKED_AT_ONCE) return checkTable(table, rows, damaged);
  const all = [...rows];
  const good = new Map<string, unknown>();
  for (let from = 0; from < all.length; from += CHECKED_AT_ONCE) {
    if (from > 0) await nextTask();
    const some = checkTable(table, new Map(all.slice(from, from + CHECKED_AT_ONCE)), damaged);
    for (const [key, value] of some) good.set(key, value);
  }
  return good;
}
