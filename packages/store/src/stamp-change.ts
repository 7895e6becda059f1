import {
  type Collection,
  canonicalText,
  groupsOf,
  journalCollections,
  journalSingles,
  laterStamp,
  latestStamp,
  type MergeRow,
  type MergeRules,
  type RemovalMark,
  rowOf,
  stampAfter,
} from '@larkhold/engine';
import type { Change, Found, Table } from './adapter.ts';

/** What a change is stamped with. */
export interface StampParts {
  /** What is stored, at least the change's table and the marks. */
  found: Found;
  /** This device's name among the archer's devices, where it has one. */
  device?: string;
  /** The instant, ISO 8601 UTC; for a removal that carries none. */
  now: string;
}

/**
 * Stamps each group of fields that a change edits, later than all that is stored of the row, also where the clock was set back in between: or a
 * merge with an older copy would undo it. A row that is put after its removal says that it was put back; one that is put as removed becomes a mark.
 * @param change what the archer wants stored
 * @param parts see `StampParts`
 * @returns the changes in its place; itself where its table is no part of the journal
 * @source own; the winner of a merge is the later edit of a group (`mergeJournals`), so edits of one group must be in order
 */
export function stampChange(change: Change, parts: StampParts): Change[] {
  if (change.do !== 'put') return [change];
  const rules = rulesOf(change.table, change.key);
  if (rules === undefined) return [change];
  const next = change.value as MergeRow;
  if (next.removed === true) return removal(change.table, change.key, parts, next.editedAt);
  const stored = rowIn(parts.found, change.table, change.key);
  const mark = markIn(parts.found, change.table, change.key);
  const value = stored ? edited(stored, next, rules, parts) : fresh(next, mark, rules, parts);
  return [{ ...change, value }];
}

/**
 * Removes a row: a mark with nothing of it takes its place, later than all that is known of it.
 * @param table the row's list
 * @param key the row's key
 * @param parts see `StampParts`
 * @param at the instant, ISO 8601; the present one unless it is given
 * @returns the changes
 */
export function removal(table: Table, key: string, parts: StampParts, at = parts.now): Change[] {
  const stored = rowIn(parts.found, table, key);
  const before = laterStamp(stored && latestStamp(stored), markIn(parts.found, table, key)?.at);
  const mark: RemovalMark = { of: table, key, at: stampAfter(at, before, parts.device) };
  return [
    { table, do: 'remove', key },
    { table: 'removed', do: 'put', key: markKey(table, key), value: mark },
  ];
}

/**
 * The key under which a mark is stored.
 * @param of the list it was in
 * @param key its key there
 * @returns both in one
 */
export function markKey(of: string, key: string): string {
  return `${of}/${key}`;
}

/** A row of which nothing is stored. */
function fresh(
  next: MergeRow,
  mark: RemovalMark | undefined,
  rules: MergeRules,
  { device, now }: StampParts,
): MergeRow {
  if (mark === undefined)
    return next.editedAt === undefined ? next : { ...next, editedAt: stampAfter(next.editedAt, undefined, device) };
  const at = stampAfter(next.editedAt ?? now, mark.at, device);
  const { edits: _old, ...row } = next;
  return { ...row, editedAt: at, ...('kind' in rules && rules.kind === 'thing' ? { restoredAt: at } : {}) };
}

/** A row of which something is stored: what is the same keeps its stamp, and what this caller cannot know of stays. */
function edited(stored: MergeRow, next: MergeRow, rules: MergeRules, { device }: StampParts): MergeRow {
  if (next.editedAt === undefined) return next;
  const before = latestStamp(stored);
  if (before === undefined) return { ...next, editedAt: stampAfter(next.editedAt, undefined, device) };
  const stamp = stampAfter(next.editedAt, before, device);
  const groups = groupsOf(stored, rules);
  const wanted = groupsOf({ ...unknownFields(stored, rules), ...next, edits: undefined }, rules);
  let isChanged = false;
  for (const name of new Set([...groups.keys(), ...wanted.keys()])) {
    const value = wanted.get(name)?.value ?? {};
    if (canonicalText(groups.get(name)?.value ?? {}) === canonicalText(value)) continue;
    groups.set(name, { value, stamp });
    isChanged = true;
  }
  if (!isChanged) return stored;
  const key = rules.keyName === undefined ? {} : { [rules.keyName]: next[rules.keyName] };
  return rowOf(key, groups, stamp, stored.restoredAt);
}

function unknownFields(stored: MergeRow, rules: MergeRules): Record<string, unknown> {
  if (!('fields' in rules)) return {};
  const { fields } = rules as Collection<object>;
  return Object.fromEntries(Object.entries(stored).filter(([field]) => !Object.hasOwn(fields, field)));
}

function rulesOf(table: Table, key: string): MergeRules | undefined {
  if (table === 'single') return key in journalSingles ? journalSingles[key as keyof typeof journalSingles] : undefined;
  return table in journalCollections ? journalCollections[table as keyof typeof journalCollections] : undefined;
}

function rowIn(found: Found, table: Table, key: string): MergeRow | undefined {
  return found.get(table)?.get(key) as MergeRow | undefined;
}

function markIn(found: Found, table: Table, key: string): RemovalMark | undefined {
  return found.get('removed')?.get(markKey(table, key)) as RemovalMark | undefined;
}
