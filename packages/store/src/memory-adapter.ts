import type { Adapter, Change, Found, Table } from './adapter.ts';

/**
 * Applies changes to tables of values.
 * @param to the tables; those that are missing are left out.
 * @param changes in order.
 */
export function applyChanges(to: ReadonlyMap<Table, Map<string, unknown>>, changes: readonly Change[]): void {
  for (const change of changes) {
    const table = to.get(change.table);
    if (change.do === 'put') table?.set(change.key, change.value);
    else if (change.do === 'remove') table?.delete(change.key);
    else table?.clear();
  }
}

/**
 * A place that lasts as long as the page: for browsers that give no storage, and for tests.
 * @returns an empty adapter.
 */
export function createMemoryAdapter(): Adapter {
  const held = new Map<Table, Map<string, unknown>>();
  const tableOf = (name: Table): Map<string, unknown> => {
    const table = held.get(name) ?? new Map<string, unknown>();
    held.set(name, table);
    return table;
  };
  const copyOf = (from: readonly Table[]): Found => new Map(from.map((name) => [name, new Map(tableOf(name))]));
  const apply = (changes: readonly Change[]): void => {
    for (const change of changes) tableOf(change.table);
    // Copied as a disk would, so that a value changed afterwards by its giver does not change what is kept.
    applyChanges(
      held,
      changes.map((change) => (change.do === 'put' ? { ...change, value: structuredClone(change.value) } : change)),
    );
  };
  return {
    where: 'memory',
    read: async (from) => copyOf(from),
    readFew: async (from, counted, wanted) => {
      const whole = copyOf(from);
      const some = [...wanted(whole)].map(([name, keys]) => {
        const rows = tableOf(name);
        return [name, new Map(keys.flatMap((key) => (rows.has(key) ? [[key, rows.get(key)]] : [])))] as const;
      });
      return {
        found: new Map([...whole, ...some]),
        counts: new Map(counted.map((name) => [name, tableOf(name).size])),
      };
    },
    write: async (changes) => apply(changes),
    update: async (from, decide) => {
      const changes = decide(copyOf(from));
      apply(changes);
      return changes;
    },
    close: () => {},
  };
}
