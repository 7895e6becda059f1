import {
  type CollectionName,
  collectionNames,
  journalCollections,
  type SingleName,
  singleNames,
} from './collections.ts';
import { isSame } from './edit-order.ts';
import type { MergeRow } from './field-groups.ts';
import type { Journal } from './journal.ts';
import { createJournal, mergeJournals } from './merge-journals.ts';

/** What a merge would do with one kind of thing; each list holds identities (ids, days, weeks). */
export interface Comparison {
  /** Only the incoming journal has it. */
  added: string[];
  /** Both have it and the merge changes ours. */
  changed: string[];
  /** Both have it, they differ, and ours stays as it is. */
  kept: string[];
  same: string[];
  /** Of `changed`: those that the incoming journal removes. */
  removed: string[];
}

/** What a merge would do with something of which a journal holds only one. */
export type Verdict = 'added' | 'changed' | 'kept' | 'same';

/** What a merge would do, to be shown before it is done: each list of a journal, and what there is only one of. */
export type JournalComparison = { [Name in CollectionName]: Comparison } & { [Name in SingleName]: Verdict } & {
  /** Sums over all lists. */
  addedCount: number;
  changedCount: number;
  keptCount: number;
  sameCount: number;
};

/**
 * Tells what merging a journal into ours would do.
 * @param ours the journal we have.
 * @param incoming the one that would be merged.
 * @returns what would be new, changed, kept and the same: how much of it, and which.
 */
export function compareJournals(ours: Journal, incoming: Journal): JournalComparison {
  const [mine, theirs] = [mergeJournals(ours, createJournal()), mergeJournals(incoming, createJournal())];
  const merged = mergeJournals(mine, theirs);
  const lists = collectionNames.map((name) => [name, compare(name, mine, theirs, merged)] as const);
  const sum = (of: (comparison: Comparison) => string[]): number =>
    lists.reduce((count, [, comparison]) => count + of(comparison).length, 0);
  return {
    ...(Object.fromEntries(lists) as { [Name in CollectionName]: Comparison }),
    ...(Object.fromEntries(
      singleNames.map((name) => [
        name,
        theirs[name] === undefined ? 'same' : verdict(mine[name], theirs[name], merged[name]),
      ]),
    ) as { [Name in SingleName]: Verdict }),
    addedCount: sum((one) => one.added),
    changedCount: sum((one) => one.changed),
    keptCount: sum((one) => one.kept),
    sameCount: sum((one) => one.same),
  };
}

function compare(name: CollectionName, mine: Journal, theirs: Journal, merged: Journal): Comparison {
  const [before, after] = [byKey(name, mine), byKey(name, merged)];
  const comparison: Comparison = { added: [], changed: [], kept: [], same: [], removed: [] };
  for (const [key, row] of byKey(name, theirs)) {
    // What we have removed, and they have not heard of it, is not ours and does not become so.
    if (!before.has(key) && !after.has(key)) comparison.kept.push(key);
    else comparison[verdict(before.get(key), row, after.get(key))].push(key);
  }
  for (const key of before.keys()) {
    if (after.has(key)) continue;
    comparison.changed.push(key);
    comparison.removed.push(key);
  }
  return comparison;
}

function byKey(name: CollectionName, journal: Journal): Map<string, MergeRow> {
  const { keyName } = journalCollections[name];
  return new Map(((journal[name] ?? []) as readonly MergeRow[]).map((row) => [String(row[keyName]), row]));
}

function verdict(mine: unknown, theirs: unknown, merged: unknown): Verdict {
  if (mine === undefined) return 'added';
  if (!isSame(mine, merged)) return 'changed';
  return isSame(mine, theirs) ? 'same' : 'kept';
}
