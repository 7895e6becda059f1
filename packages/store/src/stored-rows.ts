import {
  type CollectionName,
  collectionNames,
  copyDrill,
  createJournal,
  type Journal,
  journalCollections,
  journalSingles,
  type RemovalMark,
  removalMarkSchema,
  type SingleName,
  singleNames,
} from '@larkhold/engine';
import { say } from '@larkhold/words';
import * as z from 'zod';
import type { Change, Found, Table } from './adapter.ts';
import type { SetAside } from './integrity-report.ts';
import { kitSchema, salvageKit } from './kit.ts';
import { RefusedValueError, reasonOf, valueAt } from './refused-value.ts';
import { runningDrillSchema } from './running-drill.ts';
import { placeSchema } from './running-rows.ts';
import { markKey } from './stamp-change.ts';

/** The tables that make a journal. `single` holds what there is only one of. */
export const journalTables = [...collectionNames, 'removed', 'single'] as const satisfies readonly Table[];

/** The parts of a journal that only a newer app knows, by name. */
const unknownPartsSchema = z.record(z.string(), z.unknown());
const knownParts: ReadonlySet<string> = new Set([...collectionNames, ...singleNames, 'removed']);

const singleSchemas = {
  kit: kitSchema,
  running: runningDrillSchema,
  place: placeSchema,
  unknownParts: unknownPartsSchema,
  majorGoal: journalSingles.majorGoal.schema,
  season: journalSingles.season.schema,
  ownKit: journalSingles.ownKit.schema,
} as const satisfies Record<SingleName | 'kit' | 'running' | 'place' | 'unknownParts', z.ZodType>;
/** A table of rows that have a key inside. */
export type RowTable = CollectionName;

/**
 * Makes the change that puts a value.
 * @param table where.
 * @param key under which key.
 * @param value what.
 * @returns the change.
 */
export function put(table: Table, key: string, value: unknown): Change {
  return { table, do: 'put', key, value };
}

/**
 * Checks a row and makes the change that puts it.
 * @param table where.
 * @param row what a caller wants stored.
 * @returns the change, with a copy of the row.
 * @throws RefusedValueError if the row is not what the table holds
 */
export function putRow(table: RowTable, row: unknown): Change {
  const read = journalCollections[table].schema.safeParse(row);
  if (!read.success) throw new RefusedValueError(table, read.error, row);
  const data: Readonly<Record<string, unknown>> = { ...read.data };
  return put(table, String(data[journalCollections[table].keyName]), data);
}

/**
 * Checks a single value and makes the change that puts it. What is put is a copy, and JSON: a value that a disk can't hold must not wait among the
 * changes that are still to be written.
 * @param key under which key.
 * @param value what a caller wants stored.
 * @returns the change.
 * @throws RefusedValueError if the value is not what this key holds
 */
export function putSingle(key: Exclude<keyof typeof singleSchemas, 'running' | 'place'>, value: unknown): Change {
  const read = singleSchemas[key].safeParse(value);
  if (!read.success) throw new RefusedValueError(key, read.error, value);
  return put('single', key, JSON.parse(JSON.stringify(read.data)));
}

/**
 * Tells good stored values from damaged ones.
 * @param table where they were found.
 * @param rows by key, as found.
 * @param damaged takes what could not be read.
 * @returns the good ones by key, defaults filled in.
 */
export function checkTable(
  table: Table,
  rows: ReadonlyMap<string, unknown>,
  damaged: SetAside[],
): Map<string, unknown> {
  const good = new Map<string, unknown>();
  for (const [key, value] of rows) {
    if (table === 'single' && key === 'kit') {
      // One bad value must not cost the archer the whole kit: it is set aside as found, and what is good of it is used.
      const read = salvageKit(value);
      if (read.damaged) damaged.push({ table, key, message: say('odd.kitValue'), value });
      good.set(key, read.kit);
      continue;
    }
    const copied = table === 'drills' ? copyDrill(value) : undefined;
    const read = copied ? { success: true as const, data: copied } : schemaOf(table, key)?.safeParse(value);
    if (read === undefined) good.set(key, value);
    else if (read.success) good.set(key, read.data);
    else damaged.push({ table, key, message: sentenceOf(read.error, value), value });
  }
  return good;
}

/**
 * Puts a journal together from checked tables.
 * @param found the journal's tables.
 * @returns the journal, in the order in which tables give their rows; `mergeJournals` puts one in order.
 */
export function journalOf(found: Found): Journal {
  const rowsOf = (table: Table): unknown[] => [...(found.get(table)?.values() ?? [])];
  const single = found.get('single');
  const lists = [...collectionNames, 'removed' as const].map((name) => [name, rowsOf(name)] as const);
  const singles = singleNames.map((name) => [name, single?.get(name)] as const);
  return {
    ...(single?.get('unknownParts') as object | undefined),
    ...createJournal(),
    ...Object.fromEntries(lists.filter(([, rows]) => rows.length > 0)),
    ...Object.fromEntries(singles.filter(([, value]) => value !== undefined)),
  };
}

/**
 * Makes the changes that lead from one journal to another.
 * @param from what is stored.
 * @param to what will be; entries that are the same object as before are left alone.
 * @returns the changes. @throws RefusedValueError if an entry is not valid
 */
export function journalChanges(from: Journal, to: Journal): Change[] {
  return [
    ...collectionNames.flatMap((name) => rowChanges(name, from, to)),
    ...markChanges(from.removed ?? [], to.removed ?? []),
    ...singleNames.flatMap((name): Change[] => {
      if (from[name] === to[name]) return [];
      return [to[name] === undefined ? { table: 'single', do: 'remove', key: name } : putSingle(name, to[name])];
    }),
    ...unknownChanges(from, to),
  ];
}

function rowChanges(table: CollectionName, from: Journal, to: Journal): Change[] {
  const { keyName } = journalCollections[table];
  const keyOf = (row: object): string => String(Object.entries(row).find(([field]) => field === keyName)?.[1]);
  const before: readonly object[] = from[table] ?? [];
  const after: readonly object[] = to[table] ?? [];
  const [known, wanted] = [new Set(before), new Set(after.map(keyOf))];
  return [
    ...before.flatMap((row): Change[] => (wanted.has(keyOf(row)) ? [] : [{ table, do: 'remove', key: keyOf(row) }])),
    ...after.filter((row) => !known.has(row)).map((row) => putRow(table, row)),
  ];
}

function markChanges(from: readonly RemovalMark[], to: readonly RemovalMark[]): Change[] {
  const keyOf = ({ of, key }: RemovalMark): string => markKey(of, key);
  const [known, wanted] = [new Set(from), new Set(to.map(keyOf))];
  return [
    ...from.flatMap((mark): Change[] =>
      wanted.has(keyOf(mark)) ? [] : [{ table: 'removed', do: 'remove', key: keyOf(mark) }],
    ),
    ...to.filter((mark) => !known.has(mark)).map((mark) => put('removed', keyOf(mark), removalMarkSchema.parse(mark))),
  ];
}

function unknownChanges(from: Journal, to: Journal): Change[] {
  const partsOf = (journal: Journal) => Object.entries(journal).filter(([name]) => !knownParts.has(name));
  const [before, after] = [partsOf(from), partsOf(to)];
  if (JSON.stringify(before) === JSON.stringify(after)) return [];
  if (after.length === 0) return [{ table: 'single', do: 'remove', key: 'unknownParts' }];
  return [putSingle('unknownParts', Object.fromEntries(after))];
}

function schemaOf(table: Table, key: string): z.ZodType | undefined {
  if (table === 'aside' || table === 'handles' || table === 'past' || table === 'lately') return undefined;
  if (table === 'removed') return removalMarkSchema;
  if (table !== 'single') return journalCollections[table].schema;
  return Object.hasOwn(singleSchemas, key) ? singleSchemas[key as keyof typeof singleSchemas] : undefined;
}

function sentenceOf({ issues: [issue] }: z.ZodError, value: unknown): string {
  const path = issue?.path ?? [];
  const reason = reasonOf(issue, valueAt(value, path));
  return path.length === 0 ? reason : say('odd.at', { where: path.map(String).join('/'), reason });
}
