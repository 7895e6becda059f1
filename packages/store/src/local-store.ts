import {
  type DrillRecord,
  type Journal,
  type Past,
  type ProgramCopy,
  readablePrograms,
  stampAfter,
} from '@larkhold/engine';
import type { Adapter, Change, Found, Table } from './adapter.ts';
import type { IntegrityReport } from './integrity-report.ts';
import type { Kit } from './kit.ts';
import { kitChanges, kitTables } from './kit-changes.ts';
import { groupedTables } from './lately.ts';
import { latestOf } from './latest-of.ts';
import { wholeKit } from './own-kit.ts';
import { readRecent, writePast } from './recent-journal.ts';
import { noRunning, runningChanges, runningOf } from './running-rows.ts';
import { removal, type StampParts, stampChange } from './stamp-change.ts';
import type { RecentJournal, Store } from './store.ts';
import { journalChanges, journalOf, journalTables, put, putRow, putSingle, type RowTable } from './stored-rows.ts';
import { createTableKeeper, newStamp, type TabChannel } from './table-keeper.ts';
import { type Incoming, incomingTables, type LeftValue, type TakenIn, takeBack, takeIn, takenBy } from './taken-in.ts';
import { isRowTable, ofStoreAlone } from './touched-tables.ts';
import type { StoreTrouble } from './trouble.ts';

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
 * A store over an adapter.
 * @param parts the adapter and its surroundings
 * @returns the store
 */
export function createLocalStore(parts: LocalStoreParts): Store {
  const { adapter, channel, now } = parts;
  let journal: Journal | undefined;
  let device: string | undefined;
  let latest: string | undefined;
  let keptPast: string | undefined;
  const tables = createTableKeeper({
    ...{ adapter, channel, now },
    forgetJournal: () => {
      journal = undefined;
    },
  });
  const { inTurn, isRead, load, write, update } = tables;

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
    if (!journalTables.every(isRead)) return journalOf(found);
    if (journal === undefined) {
      journal = journalOf(found);
      latest = latestOf(journal, now());
    }
    return journal;
  };
  const recentJournal = async (today: string): Promise<RecentJournal | undefined> => {
    if (isRead('drills') || tables.unwrittenCount > 0) return undefined;
    const others = await load(journalTables.filter((table) => !groupedTables.includes(table)));
    const read = await readRecent(adapter, others, today);
    if (!read) return undefined;
    ({ latest, text: keptPast } = read);
    return read.recent;
  };
  const keepPast = async (past: Past, of: Journal): Promise<boolean> => {
    const found = await load(journalTables);
    if (journal !== of || tables.unwrittenCount > 0 || !journalTables.every(isRead)) return false;
    const text = JSON.stringify(past);
    const changes = await writePast({ adapter, found, past, latest, stamp: newStamp(), isKnown: text === keptPast });
    if (!changes) return false;
    tables.mirror(changes);
    keptPast = text;
    return true;
  };
  const hybridInstant = (): string => stampAfter(now(), latest);
  const handle = (key: string): Promise<unknown> =>
    inTurn(async () => (await load(smallTables)).get('handles')?.get(key));
  const putHandle = (key: string, value: unknown): Promise<void> =>
    inTurn(() => write([value === undefined ? { table: 'handles', do: 'remove', key } : put('handles', key, value)]));
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
      return tables.trouble ?? parts.trouble;
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
    subscribe: tables.subscribe,
    setAside: () => inTurn(tables.readAside),
    removeAside: ({ table, key, asideKey }) =>
      inTurn(async () => {
        // What found no room aside lies where it was found.
        if (asideKey === undefined) tables.forgetUnmoved(table, key);
        const at = asideKey === undefined ? { table: table as Table, key } : { table: 'aside' as const, key: asideKey };
        await write([{ ...at, do: 'remove' }]);
      }),
    removeListed: async (table, key) => {
      if (!isRowTable(table)) throw new RangeError(`table: expected a list of the journal, got ${table}`);
      await remove(table, [key]);
    },
    integrityReport: () =>
      inTurn(async (): Promise<IntegrityReport> => {
        tables.forget();
        const found = await load(journalTables);
        return {
          where: adapter.where,
          trouble: tables.trouble ?? parts.trouble,
          counts: Object.fromEntries(
            [...found].filter(([table]) => !ofStoreAlone.includes(table)).map(([t, rows]) => [t, rows.size]),
          ),
          setAside: await tables.readAside(),
          unwrittenCount: tables.unwrittenCount,
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
