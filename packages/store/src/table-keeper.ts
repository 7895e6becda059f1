import type { Adapter, Change, Found, Table } from './adapter.ts';
import { checkInTurns } from './check-in-turns.ts';
import type { KeptAside, SetAside } from './integrity-report.ts';
import { withNames, withNaming } from './lately.ts';
import { applyChanges } from './memory-adapter.ts';
import { checkTable, put } from './stored-rows.ts';
import { isOfJournal, supersede, tablesOf, withGroup } from './touched-tables.ts';
import { describeTrouble, StoreError, type StoreTrouble, troubleOf } from './trouble.ts';

/** Tells other tabs which tables changed, and hears of theirs. */
export interface TabChannel {
  tell(changed: readonly Table[]): void;
  hear(fn: (changed: readonly Table[]) => void): void;
  close(): void;
}

/** Rows by table, on a disk and in memory. Whatever reads or changes them does so in a turn. */
export interface TableKeeper {
  /** Why the last write did not reach the disk. */
  readonly trouble: StoreTrouble | undefined;
  /** Changes that are in memory only. */
  readonly unwrittenCount: number;
  /** Does one thing at a time, so that a read never sees half of a change. */
  inTurn<T>(work: () => Promise<T>): Promise<T>;
  /** Whether a table has been read. */
  isRead(table: Table): boolean;
  /** Reads tables that are not read yet. Damaged rows are set aside. @returns all that is read */
  load(from: readonly Table[]): Promise<Found>;
  /** Writes changes, and those that failed before. @throws StoreError where they did not reach the disk; they are in memory then */
  write(changes: readonly Change[], durable?: boolean): Promise<void>;
  /** Changes what is on the disk at that moment, so that no other tab's change gets lost in between. */
  update(from: readonly Table[], decide: (found: Found) => Change[]): Promise<void>;
  /** Puts changes that are on the disk already into memory too. */
  mirror(changes: readonly Change[]): void;
  /** Damaged rows, wherever they are. */
  readAside(): Promise<KeptAside[]>;
  /** Takes a damaged row off that found no room aside. */
  forgetUnmoved(table: string, key: string): void;
  /** Forgets what was read, so that all of it is read and checked again. */
  forget(): void;
  /** Hears which tables changed. @returns stops it */
  subscribe(fn: (changed: readonly Table[]) => void): () => void;
}

/**
 * Keeps a checked copy of each table that was read, so that pages don't read the disk again, and every change that did not reach the disk, so
 * that nothing is lost while the page is open.
 * @param parts the adapter, the channel to other tabs, the clock; `forgetJournal` is called whenever a row of the journal changes
 * @returns the keeper, with nothing read yet
 */
export function createTableKeeper(parts: {
  adapter: Adapter;
  channel?: TabChannel;
  now: () => string;
  forgetJournal: () => void;
}): TableKeeper {
  const { adapter, channel, now, forgetJournal } = parts;
  const mirror = new Map<Table, Map<string, unknown>>();
  const listeners = new Set<(changed: readonly Table[]) => void>();
  const unmoved = new Map<string, SetAside>();
  let unwritten: Change[] = [];
  let writeTrouble: StoreTrouble | undefined;
  let queue: Promise<unknown> = Promise.resolve();

  const inTurn = <T>(work: () => Promise<T>): Promise<T> => {
    const turn = queue.then(work, work);
    queue = turn.catch(() => {});
    return turn;
  };
  const notify = (changed: readonly Table[]): void => {
    for (const fn of [...listeners]) fn(changed);
  };
  let heardCount = 0;
  channel?.hear((changed) => {
    heardCount += 1;
    for (const table of withGroup(changed)) mirror.delete(table);
    forgetJournal();
    notify(changed);
  });

  const readChecked = async (from: readonly Table[]) => {
    for (;;) {
      const heardBefore = heardCount;
      const damaged: SetAside[] = [];
      const checked = new Map<Table, Map<string, unknown>>();
      for (const [table, rows] of await adapter.read(from))
        checked.set(table, await checkInTurns(table, rows, damaged));
      // What another tab changed in the meantime is read once more.
      if (heardCount === heardBefore) return { checked, damaged };
    }
  };
  const load = async (from: readonly Table[]): Promise<Found> => {
    const missing = withGroup(from.filter((table) => !mirror.has(table)));
    if (missing.length > 0) {
      try {
        const { checked, damaged } = await readChecked(missing);
        for (const [table, rows] of checked) mirror.set(table, rows);
        applyChanges(mirror, unwritten);
        await moveAside(damaged);
      } catch (error) {
        writeTrouble = describeTrouble(troubleOf(error));
        const left = new Map(missing.map((table) => [table, new Map<string, unknown>()]));
        applyChanges(left, unwritten);
        return new Map([...mirror, ...left]);
      }
    }
    return mirror;
  };
  const moveAside = async (damaged: readonly SetAside[]): Promise<void> => {
    if (damaged.length === 0) return;
    const at = now();
    const moves = damaged.flatMap((one): Change[] => [
      put('aside', `${one.table}/${one.key}@${at}`, one),
      one.key === 'kit' && one.table === 'single'
        ? put('single', 'kit', mirror.get('single')?.get('kit'))
        : { table: one.table as Table, do: 'remove', key: one.key },
    ]);
    try {
      await adapter.write(withNames(moves, newStamp()));
    } catch {
      // No room to move them: they stay where they are, and are found again next time.
      for (const one of damaged) unmoved.set(`${one.table}/${one.key}`, one);
    }
  };

  const readAside = async (): Promise<KeptAside[]> => {
    const aside = await adapter.read(['aside']).catch((): Found => new Map());
    const moved = [...(aside.get('aside') ?? [])] as [string, SetAside][];
    return [...moved.map(([asideKey, one]) => ({ ...one, asideKey })), ...unmoved.values()];
  };

  const settle = (changes: readonly Change[]): void => {
    applyChanges(mirror, changes);
    if (changes.some(isOfJournal)) forgetJournal();
  };
  const fail = (error: unknown, changes: readonly Change[]): StoreError => {
    const kind = troubleOf(error);
    unwritten = [...supersede(unwritten, changes), ...changes];
    settle(changes);
    writeTrouble = describeTrouble(kind);
    notify(tablesOf(changes));
    return new StoreError(kind, error);
  };
  const succeed = (changes: readonly Change[]): void => {
    settle(changes);
    writeTrouble = unwritten.length > 0 ? writeTrouble : undefined;
    const changed = tablesOf(changes);
    channel?.tell(changed);
    notify(changed);
  };
  const write = async (changes: readonly Change[], durable = false): Promise<void> => {
    const older = supersede(unwritten, changes);
    const stamp = newStamp();
    const all = withNames([...older, ...changes], stamp);
    try {
      await adapter.write(all, durable);
    } catch (error) {
      // What failed before may be what has no room; the new change may still fit.
      if (older.length === 0) throw fail(error, changes);
      const alone = withNames(changes, stamp);
      await adapter.write(alone, durable).catch((again: unknown) => {
        throw fail(again, changes);
      });
      unwritten = older;
      succeed(alone);
      return;
    }
    unwritten = [];
    succeed(all);
  };
  const update = async (from: readonly Table[], decide: (found: Found) => Change[]): Promise<void> => {
    await load(from); // damaged values are set aside first, so that they are not written over
    let refused: { error: unknown } | undefined;
    const decideChecked = (found: Found): Change[] => {
      const ours = new Map(from.map((table) => [table, checkTable(table, found.get(table) ?? new Map(), [])]));
      applyChanges(ours, unwritten);
      try {
        return withNames(decide(ours), newStamp());
      } catch (error) {
        refused = { error };
        throw error;
      }
    };
    let changes: Change[];
    try {
      changes = await adapter.update(withNaming(from), decideChecked);
    } catch (error) {
      if (refused) throw refused.error; // the caller's mistake, not the disk's
      throw fail(error, decide(await load(from)));
    }
    unwritten = supersede(unwritten, changes);
    succeed(changes);
    if (unwritten.length > 0) await write([]).catch(() => {}); // there is room again, it seems; `trouble` says if not for all
  };

  return {
    get trouble() {
      return writeTrouble;
    },
    get unwrittenCount() {
      return unwritten.length;
    },
    inTurn,
    isRead: (table) => mirror.has(table),
    load,
    write,
    update,
    mirror: (changes) => applyChanges(mirror, changes),
    readAside,
    forgetUnmoved: (table, key) => {
      unmoved.delete(`${table}/${key}`);
    },
    forget: () => {
      mirror.clear();
      unmoved.clear();
      forgetJournal();
    },
    subscribe: (fn) => {
      listeners.add(fn);
      return () => listeners.delete(fn);
    },
  };
}

/** Two are never the same. */
export function newStamp(): string {
  return `${Date.now()} ${Math.random()}`;
}
