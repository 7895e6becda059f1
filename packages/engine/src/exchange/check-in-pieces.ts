import type * as z from 'zod';

/** Rows of a list that are checked at once. */
const PIECE_ROWS = 500;

/**
 * Checks a file against its schema, long lists piece by piece, and stops at the first piece with a mistake in it: a schema alone gathers every
 * mistake of a file, and a file of a megabyte can hold millions of them.
 * @param schema of an object whose rules each concern one key, and one row of a list
 * @param file what was found; keys that are short lists, or no lists, are checked together
 * @returns the value, or the first mistakes with their paths in the whole file
 */
export function checkInPieces<T>(
  schema: z.ZodType<T>,
  file: unknown,
): { ok: true; value: T } | { ok: false; issues: readonly z.core.$ZodIssue[] } {
  const long = longListsOf(file);
  const first = check(schema, long.size === 0 ? file : { ...Object(file), ...heads(long, PIECE_ROWS) });
  if (!first.ok || long.size === 0) return first;
  const whole = new Map<string, unknown[]>();
  for (const [key, rows] of long) {
    const checked = [...rowsOf(first.value, key)];
    for (let start = PIECE_ROWS; start < rows.length; start += PIECE_ROWS) {
      const piece = rows.slice(start, start + PIECE_ROWS);
      const read = check(schema, { ...Object(file), ...heads(long, 1), [key]: piece });
      if (!read.ok) return { ok: false, issues: read.issues.map((issue) => moved(issue, key, start)) };
      for (const row of rowsOf(read.value, key)) checked.push(row);
    }
    whole.set(key, checked);
  }
  // Every piece was checked by the schema, so that put together they are what it gives.
  return { ok: true, value: Object.assign({}, first.value, Object.fromEntries(whole)) };
}

function check<T>(schema: z.ZodType<T>, file: unknown): ReturnType<typeof checkInPieces<T>> {
  const read = schema.safeParse(file);
  return read.success ? { ok: true, value: read.data } : { ok: false, issues: read.error.issues };
}

function longListsOf(file: unknown): Map<string, readonly unknown[]> {
  const long = new Map<string, readonly unknown[]>();
  if (typeof file !== 'object' || file === null) return long;
  for (const [key, value] of Object.entries(file)) {
    if (Array.isArray(value) && value.length > PIECE_ROWS) long.set(key, value);
  }
  return long;
}

function heads(lists: ReadonlyMap<string, readonly unknown[]>, count: number): Record<string, readonly unknown[]> {
  return Object.fromEntries([...lists].map(([key, rows]) => [key, rows.slice(0, count)]));
}

function rowsOf(value: unknown, key: string): readonly unknown[] {
  const rows: unknown = Object.getOwnPropertyDescriptor(value, key)?.value;
  return Array.isArray(rows) ? rows : [];
}

function moved(issue: z.core.$ZodIssue, key: string, by: number): z.core.$ZodIssue {
  const [list, row, ...rest] = issue.path;
  return list === key && typeof row === 'number' ? { ...issue, path: [list, row + by, ...rest] } : issue;
}
