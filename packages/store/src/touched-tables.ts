import { collectionNames } from '@larkhold/engine';
import type { Change, Table } from './adapter.ts';
import { groupedTables } from './lately.ts';
import { journalTables, type RowTable } from './stored-rows.ts';

/** Whether a change changes the journal. The kit of this device and the drill under way are no part of it. */
export function isOfJournal(change: Change): boolean {
  if (change.table === 'single' && change.do !== 'clear') return !['kit', 'running', 'place'].includes(change.key);
  return journalTables.some((table) => table === change.table);
}

export function isRowTable(table: string): table is RowTable {
  return collectionNames.some((name) => name === table);
}

/** Leaves out the changes that later ones undo. */
export function supersede(older: readonly Change[], newer: readonly Change[]): Change[] {
  const cleared = new Set(newer.filter((change) => change.do === 'clear').map((change) => change.table));
  const keyOf = (change: Change): string => `${change.table}/${change.do === 'clear' ? '' : change.key}`;
  const written = new Set(newer.filter((change) => change.do !== 'clear').map(keyOf));
  return older.filter((change) => !cleared.has(change.table) && (change.do === 'clear' || !written.has(keyOf(change))));
}

/** What the store keeps for itself. */
export const ofStoreAlone: readonly Table[] = ['aside', 'past', 'lately'];

/** The tables whose change others hear of. */
export function tablesOf(changes: readonly Change[]): Table[] {
  return [...new Set(changes.map((change) => change.table))].filter((table) => table !== 'past' && table !== 'lately');
}

/** Tables, and those that are read together with them. */
export function withGroup(tables: readonly Table[]): readonly Table[] {
  return tables.some((table) => groupedTables.includes(table)) ? [...new Set([...tables, ...groupedTables])] : tables;
}
