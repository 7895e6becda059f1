import { FOLD_VERSION, type Past } from '@larkhold/engine';
import * as z from 'zod';
import type { Found, WantedRows } from './adapter.ts';
import { dateOf, foldedTables, namedRows } from './lately.ts';

/** A folded past as it lies on the disk. It is only ever a copy: whatever is wrong with it, it is folded again. */
const rowSchema = z.strictObject({
  /** Of the rules that it was folded by. */
  version: z.literal(FOLD_VERSION),
  /** The latest edit in the whole journal, ISO 8601, for a clock that never goes back. */
  latest: z.string().max(60).optional(),
  /** Of `text`: a damaged past is not used. */
  sum: z.string(),
  text: z.string(),
});

/** Days at least that are read beside a past. */
const LEAST_DAYS = 14;
/** More rows than these are no few. */
const MOST_ROWS = 1500;
const DAY_MS = 86_400_000;

/**
 * Writes a folded past for the disk.
 * @param past as the engine gives it
 * @param latest the latest edit in the journal, ISO 8601
 * @returns the row
 */
export function pastRow(past: Past, latest: string | undefined): unknown {
  const text = JSON.stringify(past);
  return { version: FOLD_VERSION, ...(latest === undefined ? {} : { latest }), sum: sumOf(text), text };
}

/**
 * Reads a folded past, and whether it still holds.
 * @param row as found
 * @param found `lately`, and the rows that it names, as found
 * @param counts how many rows there are of each table
 * @param today ISO 8601 day
 * @returns the past; undefined where it is damaged, of other rules, of a day that is too near or still to come, or where anything in it has
 * changed since
 */
export function readPast(
  row: unknown,
  found: Found,
  counts: ReadonlyMap<string, number>,
  today: string,
): { past: Past; latest?: string } | undefined {
  const read = rowSchema.safeParse(row);
  if (!read.success || sumOf(read.data.text) !== read.data.sum) return undefined;
  const past: Past = JSON.parse(read.data.text); // as it was written: the sum says so
  if (Date.parse(today) - Date.parse(past.before) < LEAST_DAYS * DAY_MS) return undefined;
  const named = namedRows(found);
  if (!isWhole(past, named, counts)) return undefined;
  for (const table of foldedTables) {
    const keys = named.get(table) ?? [];
    if (keys.length > MOST_ROWS) return undefined;
    const rows = found.get(table);
    if (keys.some((key) => !(dateOf(rows?.get(key)) >= past.before))) return undefined;
  }
  return { past, latest: read.data.latest };
}

/**
 * Whether a past and the rows beside it are all the rows there are.
 * @param past as the engine gives it
 * @param beside the keys of the rows that are not in it, by table
 * @param counts how many rows there are of each table
 * @returns true where none is missing and none is there twice
 */
export function isWhole(past: Past, beside: WantedRows, counts: ReadonlyMap<string, number>): boolean {
  const inPast = { drills: past.drillCount, days: past.dayCount };
  return foldedTables.every((table) => {
    const keys = beside.get(table);
    return keys !== undefined && inPast[table] + keys.length === counts.get(table);
  });
}

/** A sum that a changed text does not keep by chance (Fowler, Noll and Vo, FNV-1a of 32 bits, from memory), and its length. */
function sumOf(text: string): string {
  let sum = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) sum = Math.imul(sum ^ text.charCodeAt(at), 0x01000193);
  return `${text.length} ${(sum >>> 0).toString(16)}`;
}
