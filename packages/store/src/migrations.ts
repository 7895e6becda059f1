import type { IDBPDatabase, IDBPTransaction } from 'idb';

/** The transaction of a version change: all steps happen or none. */
export type UpgradeTransaction = IDBPTransaction<unknown, string[], 'versionchange'>;

/** Brings a database from one version to the next, inside the transaction of the version change: if it throws, nothing has changed. */
export type MigrationStep = (database: IDBPDatabase, transaction: UpgradeTransaction) => void | Promise<void>;

/**
 * One step a version: step 0 makes version 1. Any change of a stored schema is a new step, also one that only adds a key: an old tab must
 * not meet a value that it would take for damaged. Steps are never changed once shipped.
 */
export const migrationSteps: readonly MigrationStep[] = [
  (database) => {
    for (const table of ['programs', 'drills', 'days', 'weeks', 'single', 'aside']) database.createObjectStore(table);
  },
  (database) => {
    database.createObjectStore('notes');
  },
  async (_, transaction) => {
    // The kit learned of mirrors' whole way, other presses and full screen; S for a skip, where nobody had changed it, became N.
    const single = transaction.objectStore('single');
    const kit: unknown = await single.get('kit');
    if (!isObject(kit) || !isObject(kit.keys)) return;
    if (JSON.stringify(kit.keys.skipRep) !== JSON.stringify(['ArrowRight', 'KeyS'])) return;
    await single.put({ ...kit, keys: { ...kit.keys, skipRep: ['ArrowRight', 'KeyN'] } }, 'kit');
  },
  async (database, transaction) => {
    // Milestones, and the folder that backups go to. The check at home is put away by place now: where it was for all, it is shown again.
    for (const table of ['milestones', 'handles']) database.createObjectStore(table);
    const single = transaction.objectStore('single');
    const kit: unknown = await single.get('kit');
    if (!isObject(kit) || !('rangeCheckDone' in kit)) return;
    const { rangeCheckDone: _done, ...rest } = kit;
    await single.put(rest, 'kit');
  },
  async (database, transaction) => {
    // One journal on all devices: marks hold nothing of what was removed, programs carry stamps, and the archer's values of the kit are shared.
    const removed = database.createObjectStore('removed');
    for (const [table, keyName] of version4Lists) {
      for (const row of await transaction.objectStore(table).getAll()) {
        if (!isObject(row) || row.removed !== true) continue;
        const key = String(row[keyName]);
        await removed.put({ of: table, key, at: String(row.editedAt ?? '') }, `${table}/${key}`);
        await transaction.objectStore(table).delete(key);
      }
    }
    const [programs, opened] = [transaction.objectStore('programs'), database.createObjectStore('opened')];
    for (const id of await programs.getAllKeys()) {
      await opened.put({ id: String(id), program: await programs.get(id) }, id);
    }
    database.deleteObjectStore('programs');
    const single = transaction.objectStore('single');
    const kit: unknown = await single.get('kit');
    const own = isObject(kit) ? Object.entries(kit).filter(([name, value]) => isArchersOwn(name, value)) : [];
    if (own.length > 0) await single.put(Object.fromEntries(own), 'ownKit');
  },
  () => {
    // The drill under way is kept in two rows from here on. One that was kept in a single row is read as it is.
  },
  () => {
    // The kit learned how much is said, the key that cuts a rest short, and how the display is laid out. What is left out has its usual value.
  },
  (database) => {
    // A folded past, and the names of what was put since. Both begin empty: the first start reads everything, as before.
    for (const table of ['past', 'lately']) database.createObjectStore(table);
  },
];

const version4Lists = [
  ...([
    ['drills', 'id'],
    ['days', 'date'],
    ['weeks', 'week'],
  ] as const),
  ...([
    ['notes', 'id'],
    ['milestones', 'id'],
  ] as const),
];

/** What version 4's kit held of the archer, by name, with what nobody had chosen: that is no choice to share. Units and the week's start came from the browser. */
const version4Usual: Record<string, unknown> = {
  ...{ bow: 'recurve', hand: 'right', shotProcess: [], rangeCheckPlaces: [] },
  ...{
    drawWeightLbf: undefined,
    drawLengthIn: undefined,
    ageBand: undefined,
    shotSketch: undefined,
    archer: undefined,
  },
  ...{ routines: undefined, programId: undefined, maxHoldSeconds: undefined, plan: undefined },
};

function isArchersOwn(name: string, value: unknown): boolean {
  return Object.hasOwn(version4Usual, name) && JSON.stringify(value) !== JSON.stringify(version4Usual[name]);
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}
