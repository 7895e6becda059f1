import {
  type DrillRecord,
  type Journal,
  type Past,
  type ProgramCopy,
  readablePrograms,
  stampAfter,
} from '@larkhold/engine';
import type { Adapter, Change, Found, Table } from './adapter.ts';
import { checkInTurns } from './check-in-turns.ts';
import type { IntegrityReport, KeptAside, SetAside } from './integrity-report.ts';
import type { Kit } from './kit.ts';
import { kitChanges, kitTables } from './kit-changes.ts';
import { groupedTables, withNames, withNaming } from './lately.ts';
import { latestOf } from './latest-of.ts';
import { applyChanges } from './memory-adapter.ts';
import { wholeKit } from './own-kit.ts';
import { readRecent, writePast } from './recent-journal.ts';
import { noRunning, runningChanges, runningOf } from './running-rows.ts';
import { removal, type StampParts, stampChange } from './stamp-change.ts';
import type { RecentJournal, Store } from './store.ts';
import {
  checkTable,
  journalChanges,
  journalOf,
  journalTables,
  put,
  putRow,
  putSingle,
  type RowTable,
} from './stored-rows.ts';
import { type Incoming, incomingTables, type LeftValue, type TakenIn, takeBack, takeIn, takenBy } from './taken-in.ts';
import { isOfJournal, isRowTable, ofStoreAlone, supersede, tablesOf, withGroup } from './touched-tables.ts';
import { describeTrouble, StoreError, type StoreTrouble, troubleOf } from './trouble.ts';

/** Tells other tabs which tables changed, and hears of theirs. */
export interface TabChannel {
  tell(changed: readonly Table[]): void;
  hear(fn: (changed: readonly Table[]) => void): void;
  close(): void;
}

/** What a store needs of its surroundings. */
export interface LocalStoreParts {
  adapter: Adapter;
  /** Why it is not on the disk, if it is not. */
  trouble?: StoreTrouble;
  channel?: TabChannel;
  /** The instant, ISO 8601 UTC. */
  now: () => string;
  /** A drill is under way in this tab, or over. */
  onRunning?: (isRunning: boolean) => void;
  /** What the kit holds, besides its defaults, until one is stored. */
  firstKit?: Partial<Kit>;
}

/**
 * A store over an adapter. It keeps a checked copy of each table it has read, so that pages don't read the disk again, and every change that
 * did not reach the disk, so that nothing is lost while the page is open.
 * @param parts the adapter and its surroundings.
 * @returns the store.
 */
export function createLocalStore(parts: LocalStoreParts): Store {
  const { adapter, channel, now } = parts;
  const mirror = new Map<Table, Map<string, unknown>>();
  const listeners = new Set<(changed: readonly Table[]) => void>();
  const unmoved = new Map<string, SetAside>();
  let unwritten: Change[] = [];
  let writeTrouble: StoreTrouble | undefined;
  let journal: Journal | undefined;
  let queue: Promise<unknown> = Promise.resolve();
  let device: string | undefined;
  let latest: string | undefined;
  let keptPast: string | undefined;

  /** One thing at a time, so that a read never sees half of a change. */
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
    journal = undefined;
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
    if (changes.some(isOfJournal)) journal = undefined;
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
  const edit = (changes: readonly Change[]): Promise<void> =>
    inTurn(async () => {
      const found = await load([...new Set<Table>([...changes.map(({ table }) => table), 'removed'])]);
      await write(changes.flatMap((change) => stampChange(change, stampParts(found))));
    });
  const remove = (table: RowTable, keys: readonly string[]): Promise<void> =>
    inTurn(async () => {
      const found = await load([table, 'removed']);
      const known = keys.filter((key) => found.get(table)?.has(key));
      await write(known.flatMap((key) => removal(table, key, stampParts(found))));
    });
  const putChecked = (table: RowTable, rows: readonly unknown[]): Promise<void> => {
    return edit(rows.map((row) => putRow(table, row)));
  };

  const kitOf = (found: Found): Kit =>
    wholeKit(found.get('single')?.get('kit') ?? parts.firstKit, found.get('single')?.get('ownKit'));
  const stampParts = (found: Found): StampParts => ({ found, device, now: hybridInstant() });
  const readJournal = async (): Promise<Journal> => {
    const found = await load(journalTables);
    if (journalTables.some((table) => !mirror.has(table))) return journalOf(found);
    if (journal === undefined) {
      journal = journalOf(found);
      latest = latestOf(journal, now());
    }
    return journal;
  };
  const recentJournal = async (today: string): Promise<RecentJournal | undefined> => {
    if (mirror.has('drills') || unwritten.length > 0) return undefined;
    const others = await load(journalTables.filter((table) => !groupedTables.includes(table)));
    const read = await readRecent(adapter, others, today);
    if (!read) return undefined;
    ({ latest, text: keptPast } = read);
    return read.recent;
  };
  const keepPast = async (past: Past, of: Journal): Promise<boolean> => {
    const found = await load(journalTables);
    if (journal !== of || unwritten.length > 0 || journalTables.some((table) => !mirror.has(table))) return false;
    const text = JSON.stringify(past);
    const changes = await writePast({ adapter, found, past, latest, stamp: newStamp(), isKnown: text === keptPast });
    if (!changes) return false;
    applyChanges(mirror, changes);
    keptPast = text;
    return true;
  };
  const hybridInstant = (): string => stampAfter(now(), latest);
  const handle = (key: string): Promise<unknown> =>
    inTurn(async () => (await load(smallTables)).get('handles')?.get(key));
  const putHandle = (key: string, value: unknown): Promise<void> =>
    inTurn(() => write([value === undefined ? { table: 'handles', do: 'remove', key } : put('handles', key, value)]));
  /** Changes what is on the disk at that moment, so that no other tab's change gets lost in between. */
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

  const rewrite = (change: (stored: Journal) => Journal): Promise<void> =>
    update(journalTables, (found) => {
      const stored = journalOf(found);
      return journalChanges(stored, change(stored));
    });
  const takeInNow = async (incoming: Incoming): Promise<TakenIn> => {
    let taken: TakenIn = { values: [] };
    await update(incomingTables, (found) => {
      const changes = takeIn(incoming, kitOf(found), stampParts(found));
      taken = takenBy(found, changes);
      return changes;
    });
    return taken;
  };

  const endDrill = async (record?: DrillRecord): Promise<void> => {
    const rows = record ? [putRow('drills', record)] : [];
    await inTurn(async () => {
      const found = await load(['single', 'drills', 'removed']);
      await write([...rows.flatMap((row) => stampChange(row, stampParts(found))), ...noRunning], true);
    }).finally(() => parts.onRunning?.(false));
  };

  return {
    where: adapter.where,
    get trouble() {
      return writeTrouble ?? parts.trouble;
    },
    programs: () =>
      inTurn(async () =>
        readablePrograms({ opened: [...((await load(['opened'])).get('opened')?.values() ?? [])] as ProgramCopy[] }),
      ),
    putProgram: async (program) => {
      const { id } = program;
      if (id === undefined) throw new TypeError('program.id: a stored program needs one, got undefined');
      await putChecked('opened', [{ id, program, editedAt: hybridInstant() }]);
    },
    removeProgram: (id) => remove('opened', [id]),
    journal: () => inTurn(readJournal),
    // Only ever a copy: where it cannot be read or written, everything is read as if there were none.
    recentJournal: (today) => inTurn(() => recentJournal(today).catch(() => undefined)),
    keepPast: (past, of) => inTurn(() => keepPast(past, of).catch(() => false)),
    putDrill: async (record) => putChecked('drills', [record]),
    putDrills: async (records) => putChecked('drills', records),
    removeDrills: (ids) => remove('drills', ids),
    putDay: async (entry) => putChecked('days', [entry]),
    putWeek: async (page) => putChecked('weeks', [page]),
    putMilestone: async (milestone) => putChecked('milestones', [milestone]),
    backupFolder: () => handle('backup'),
    putBackupFolder: (folder) => putHandle('backup', folder),
    replacedProgram: () => handle('replaced'),
    putReplacedProgram: (replaced) => putHandle('replaced', replaced),
    removedToday: () => handle('removed'),
    putRemovedToday: (removed) => putHandle('removed', removed),
    boxLink: () => handle('box'),
    putBoxLink: (link) => putHandle('box', link),
    post: () => handle('post'),
    putPost: (post) => putHandle('post', post),
    instant: hybridInstant,
    nameDevice: (name) => {
      device = name;
    },
    season: () => inTurn(async () => (await readJournal()).season?.document),
    putSeason: async (document) => edit([putSingle('season', { document, editedAt: hybridInstant() })]),
    putNote: async (note) => putChecked('notes', [note]),
    putMajorGoal: async (goal) => {
      await edit([putSingle('majorGoal', goal)]);
    },
    replaceJournal: (next) => inTurn(() => rewrite(() => next)),
    rewriteJournal: (change) => inTurn(() => rewrite(change)),
    mergeInto: async (journal) => {
      await inTurn(() => takeInNow({ journal }));
    },
    takeIn: (incoming) => inTurn(() => takeInNow(incoming)),
    takeBack: (taken) =>
      inTurn(async () => {
        let left: LeftValue[] = [];
        await update(incomingTables, (found) => {
          const back = takeBack(taken, stampParts(found));
          left = back.left;
          return back.changes;
        });
        return left;
      }),
    kit: () => inTurn(async () => kitOf(await load(['single']))),
    changeKit: (patch) =>
      inTurn(() =>
        update(kitTables, (found) => {
          const kit = kitOf(found);
          return kitChanges(kit, { ...kit, ...patch(kit) }, stampParts(found));
        }),
      ),
    putKit: (kit) =>
      inTurn(async () => {
        const found = await load(kitTables);
        await write(kitChanges(kitOf(found), kit, stampParts(found)));
      }),
    running: () => inTurn(async () => runningOf(await load(['single', 'drills']))),
    putRunning: async (running) => {
      if (running === undefined) return endDrill();
      parts.onRunning?.(true);
      await inTurn(async () => write(runningChanges(running, await load(['single'])), true));
    },
    writeRep: async (record, running) => {
      const row = putRow('drills', record);
      parts.onRunning?.(true);
      await inTurn(async () => write([row, ...runningChanges(running, await load(['single', 'drills']))], true));
    },
    endDrill,
    subscribe: (fn) => {
      listeners.add(fn);
      return () => listeners.delete(fn);
    },
    setAside: () => inTurn(readAside),
    removeAside: ({ table, key, asideKey }) =>
      inTurn(async () => {
        // What found no room aside lies where it was found.
        if (asideKey === undefined) unmoved.delete(`${table}/${key}`);
        const at = asideKey === undefined ? { table: table as Table, key } : { table: 'aside' as const, key: asideKey };
        await write([{ ...at, do: 'remove' }]);
      }),
    removeListed: async (table, key) => {
      if (!isRowTable(table)) throw new RangeError(`table: expected a list of the journal, got ${table}`);
      await remove(table, [key]);
    },
    integrityReport: () =>
      inTurn(async (): Promise<IntegrityReport> => {
        mirror.clear();
        unmoved.clear();
        journal = undefined;
        const found = await load(journalTables);
        return {
          where: adapter.where,
          trouble: writeTrouble ?? parts.trouble,
          counts: Object.fromEntries(
            [...found].filter(([table]) => !ofStoreAlone.includes(table)).map(([t, rows]) => [t, rows.size]),
          ),
          setAside: await readAside(),
          unwrittenCount: unwritten.length,
        };
      }),
    close: () => {
      channel?.close();
      adapter.close();
    },
  };
}

/** Read together by whoever first asks for a handle, as a start does: each reading is a way to the disk and back. */
const smallTables: readonly Table[] = ['handles', ...journalTables.filter((table) => !groupedTables.includes(table))];

/** Two are never the same. */
function newStamp(): string {
  return `${Date.now()} ${Math.random()}`;
}
