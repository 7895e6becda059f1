import {
  type DayEntry,
  type DrillRecord,
  dayEntrySchema,
  drillRecordSchema,
  type Journal,
  journalSchema,
  type Milestone,
  milestoneSchema,
  type NoteScrap,
  noteScrapSchema,
  programSchema,
  type WeekPage,
  weekPageSchema,
} from '@larkhold/engine';
import type { z } from 'zod';
import type { Change, Found, Table } from './adapter.ts';
import type { SetAside } from './integrity-report.ts';
import { kitSchema, salvageKit } from './kit.ts';
import { RefusedValueError } from './refused-value.ts';
import { runningDrillSchema } from './running-drill.ts';

/** The tables that make a journal. `single` holds the major goal. */
export const journalTables = [
  'drills',
  'days',
  'weeks',
  'notes',
  'milestones',
  'single',
] as const satisfies readonly Table[];
const majorGoalSchema = journalSchema.shape.majorGoal.unwrap();

const rowSchemas = {
  programs: programSchema,
  drills: drillRecordSchema,
  days: dayEntrySchema,
  weeks: weekPageSchema,
  notes: noteScrapSchema,
  milestones: milestoneSchema,
};
const keyNames = { programs: 'id', drills: 'id', days: 'date', weeks: 'week', notes: 'id', milestones: 'id' } as const;
const singleSchemas = { kit: kitSchema, running: runningDrillSchema, majorGoal: majorGoalSchema };
/** A table of rows that have a key inside. */
export type RowTable = keyof typeof rowSchemas;

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
  const read = rowSchemas[table].safeParse(row);
  if (!read.success) throw new RefusedValueError(table, read.error, row);
  return put(table, String(Object.entries(read.data).find(([name]) => name === keyNames[table])?.[1]), read.data);
}

/**
 * Checks a single value and makes the change that puts it. What is put is a copy, and JSON: a value that a disk can't hold must not wait among the
 * changes that are still to be written.
 * @param key under which key.
 * @param value what a caller wants stored.
 * @returns the change.
 * @throws RefusedValueError if the value is not what this key holds
 */
export function putSingle(key: keyof typeof singleSchemas, value: unknown): Change {
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
      if (read.damaged) damaged.push({ table, key, message: 'The kit had a value that could not be read.', value });
      good.set(key, read.kit);
      continue;
    }
    const read = schemaOf(table, key)?.safeParse(value);
    if (read === undefined) good.set(key, value);
    else if (read.success) good.set(key, read.data);
    else damaged.push({ table, key, message: sentenceOf(read.error), value });
  }
  return good;
}

/**
 * Puts a journal together from checked tables.
 * @param found the journal's tables.
 * @returns the journal, in the order in which tables give their rows; `mergeJournals` puts one in order.
 */
export function journalOf(found: Found): Journal {
  const rowsOf = <T>(table: Table): T[] => [...(found.get(table)?.values() ?? [])] as T[];
  const notes = rowsOf<NoteScrap>('notes');
  const milestones = rowsOf<Milestone>('milestones');
  const majorGoal = found.get('single')?.get('majorGoal') as Journal['majorGoal'];
  return {
    drills: rowsOf<DrillRecord>('drills'),
    days: rowsOf<DayEntry>('days'),
    weeks: rowsOf<WeekPage>('weeks'),
    ...(notes.length === 0 ? {} : { notes }),
    ...(milestones.length === 0 ? {} : { milestones }),
    ...(majorGoal === undefined ? {} : { majorGoal }),
  };
}

/**
 * Makes the changes that lead from one journal to another that holds all of it.
 * @param from what is stored.
 * @param to what shall be; entries that are the same object as before are left alone.
 * @returns the changes. @throws RefusedValueError if an entry is not valid
 */
export function journalChanges(from: Journal, to: Journal): Change[] {
  const before = new Set<unknown>([from.drills, from.days, from.weeks, from.notes ?? [], from.milestones ?? []].flat());
  const fresh = (table: RowTable, rows: readonly unknown[]): Change[] =>
    rows.filter((row) => !before.has(row)).map((row) => putRow(table, row));
  const changes = [
    ...fresh('drills', to.drills),
    ...fresh('days', to.days),
    ...fresh('weeks', to.weeks),
    ...fresh('notes', to.notes ?? []),
    ...fresh('milestones', to.milestones ?? []),
  ];
  if (to.majorGoal !== undefined && to.majorGoal !== from.majorGoal) changes.push(putSingle('majorGoal', to.majorGoal));
  return changes;
}

function schemaOf(table: Table, key: string): z.ZodType | undefined {
  if (table === 'aside' || table === 'handles') return undefined;
  if (table !== 'single') return rowSchemas[table];
  return key === 'running' || key === 'majorGoal' ? singleSchemas[key] : undefined;
}

function sentenceOf(error: z.ZodError): string {
  const first = error.issues[0];
  return first === undefined ? 'not readable' : `${first.path.join('/') || 'the value'}: ${first.message}`;
}
