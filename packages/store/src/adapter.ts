/**
 * Where values live. `removed` holds marks of what was removed. `single` holds one value a key: kit, running drill and its place, major goal, season, the archer's part
 * of the kit, and lists that only a newer app knows. `handles` holds what only this browser can read: folders, and the way to the archer's box.
 * `aside` holds what could not be read. `past` holds a folded past, and `lately` names the drills and days that were put since: see `lately.ts`.
 */
export const tables = [
  'opened',
  'drills',
  'days',
  'weeks',
  'notes',
  'milestones',
  'removed',
  'single',
  'handles',
  'aside',
  'past',
  'lately',
] as const;
/** The name of a table. */
export type Table = (typeof tables)[number];

/** One change of one table. */
export type Change =
  | { table: Table; do: 'put'; key: string; value: unknown }
  | { table: Table; do: 'remove'; key: string }
  | { table: Table; do: 'clear' };

/** What tables hold: values by key, as found, not yet checked. */
export type Found = ReadonlyMap<Table, ReadonlyMap<string, unknown>>;

/** Rows that are wanted, by table. */
export type WantedRows = ReadonlyMap<Table, readonly string[]>;

/** A place to keep values. Each call is one transaction: all of it happens or none. One acceptance suite runs on every adapter. */
export interface Adapter {
  readonly where: 'disk' | 'memory';
  read(from: readonly Table[]): Promise<Found>;
  /**
   * Reads tables, and of others only the rows that these name.
   * @param from read whole.
   * @param counted of which the number of rows is wanted.
   * @param wanted names rows of other tables; those that are not there are left out of `found`.
   */
  readFew(
    from: readonly Table[],
    counted: readonly Table[],
    wanted: (found: Found) => WantedRows,
  ): Promise<{ found: Found; counts: ReadonlyMap<Table, number> }>;
  /**
   * Applies changes in order.
   * @param durable resolve only when the changes are on the disk itself.
   */
  write(changes: readonly Change[], durable?: boolean): Promise<void>;
  /**
   * Reads tables and applies the changes that follow from them, with nothing in between.
   * @returns the changes that were applied.
   */
  update(from: readonly Table[], decide: (found: Found) => Change[]): Promise<Change[]>;
  close(): void;
}
