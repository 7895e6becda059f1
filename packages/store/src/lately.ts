import type { Change, Found, Table, WantedRows } from './adapter.ts';
import { put } from './stored-rows.ts';

// A folded past replaces all drills and days before a day, so that a start need not read them. It may be used only while they are as they
// were when it was folded. Every change of a drill or a day is therefore noted in the table `lately`, in the same transaction and by every tab:
// what is put is named there, what is removed is named no more. When a past is folded, `lately` names exactly the rows that are not in it.
//
// So the rows on the disk are as many as those in the past and those that are named, unless one of the past was removed, or put once more: each
// of these makes the sum one too many, and nothing makes it smaller. That count, and the days of the named rows, say whether the past still holds.

/** The tables that a past is folded from. */
export const foldedTables = ['drills', 'days'] as const satisfies readonly Table[];
/** These are read together: only so `lately` says what the others hold. */
export const groupedTables: readonly Table[] = [...foldedTables, 'lately'];

/** More changes at once are not named one by one: the past is given up, and folded again later. */
const MOST_NAMED = 1000;
/** In place of names: not everything is named. */
const UNNAMED = 'unnamed';

/**
 * Adds to changes what names them.
 * @param changes of any tables, in order
 * @param stamp a new one each time, so that two states of the table are never mistaken for each other
 * @returns the changes, and what they do to `lately`
 */
export function withNames(changes: readonly Change[], stamp: string): Change[] {
  const folded = changes.filter(isFolded);
  if (folded.length === 0) return [...changes];
  if (folded.length > MOST_NAMED || folded.some((change) => change.do === 'clear')) {
    const gone: Change[] = [
      { table: 'past', do: 'clear' },
      { table: 'lately', do: 'clear' },
    ];
    return [...changes, ...gone, put('lately', UNNAMED, stamp)];
  }
  return [...changes, ...folded.flatMap((change) => nameChange(change, stamp))];
}

/**
 * The tables that a transaction needs for changes that `withNames` adds to.
 * @param tables that are changed
 * @returns these, and where changes of them are named
 */
export function withNaming(tables: readonly Table[]): readonly Table[] {
  return tables.some((table) => foldedTables.some((one) => one === table)) ? [...tables, 'lately', 'past'] : tables;
}

function nameChange(change: Change, stamp: string): Change[] {
  if (change.do === 'clear') return [];
  const name = nameOf(change.table, change.key);
  return [change.do === 'put' ? put('lately', name, stamp) : { table: 'lately', do: 'remove', key: name }];
}

/**
 * The rows of the past's tables from a day on.
 * @param found these tables, checked
 * @param before the first day that is not in the past, ISO 8601
 * @returns their keys by table
 */
export function rowsSince(found: Found, before: string): WantedRows {
  return new Map(
    foldedTables.map((table) => {
      const rows = [...(found.get(table) ?? [])];
      return [table, rows.filter(([, row]) => dateOf(row) >= before).map(([key]) => key)];
    }),
  );
}

/**
 * The names of rows, as `lately` holds them.
 * @param rows keys by table
 * @returns one a row
 */
export function namesOf(rows: WantedRows): string[] {
  return [...rows].flatMap(([table, keys]) => keys.map((key) => nameOf(table, key)));
}

/**
 * The rows that `lately` names.
 * @param found holds `lately`
 * @returns their keys by table; none at all where not everything is named
 */
export function namedRows(found: Found): WantedRows {
  const rows = new Map<Table, string[]>(foldedTables.map((table) => [table, []]));
  const names = found.get('lately');
  if (!names || names.has(UNNAMED)) return new Map();
  for (const name of names.keys()) {
    const at = name.indexOf('/');
    rows.get(name.slice(0, at) as Table)?.push(name.slice(at + 1));
  }
  return rows;
}

/**
 * The day of a drill or a diary entry.
 * @param row as found
 * @returns ISO 8601; empty where it has none
 */
export function dateOf(row: unknown): string {
  const date: unknown = Object(row).date;
  return typeof date === 'string' ? date : '';
}

function isFolded({ table }: Change): boolean {
  return foldedTables.some((one) => one === table);
}

function nameOf(table: Table, key: string): string {
  return `${table}/${key}`;
}
