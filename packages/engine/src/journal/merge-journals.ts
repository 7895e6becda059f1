import {
  type CollectionName,
  collectionNames,
  journalCollections,
  journalSingles,
  singleNames,
} from './collections.ts';
import { canonicalText, compareInstants } from './edit-order.ts';
import { joinRows, type MergeRow, type MergeRules, plainRow, writtenAfter } from './field-groups.ts';
import type { Journal, RemovalMark } from './journal.ts';
import { compareStamps, compareText } from './stamp.ts';

type Marks = ReadonlyMap<string, ReadonlyMap<string, RemovalMark>>;
type Content = Record<string, unknown>;

/** Lists and values that this app knows, and the list of marks. */
const knownNames: ReadonlySet<string> = new Set([...collectionNames, ...singleNames, 'removed']);
/** How lists are merged that only a newer app knows. */
const unknownThings: MergeRules = { keyName: 'id', kind: 'thing' };

/**
 * Merges two journals: the union of what both hold, each thing once. Of a thing that both hold, each group of fields that is edited together
 * is that of the side that edited it later (`journalCollections`); of two copies of a drill that was under way, the one that got further. What
 * was removed stays so: a mark with no content is kept of it. Commutative, associative and idempotent, so devices that meet in any order end equal.
 * @param a one journal. @param b another.
 * @returns a new journal, drills in order of time, days and weeks in order. Rows are shared with a and b where they say the same.
 * @source own; a map of last-writer-wins registers with removal marks, as in Shapiro et al. 2011, A comprehensive study of convergent and
 * commutative replicated data types, 3.2 and 3.3.
 */
export function mergeJournals(a: Journal, b: Journal): Journal {
  const [left, right] = [a as Content, b as Content];
  const removed = unionMarks([...marksIn(left), ...marksIn(right)]);
  const marks: Marks = byList(removed);
  const merged: Content = {};
  for (const name of collectionNames) {
    const rules = journalCollections[name];
    const rows = union([...rowsIn(left, name), ...rowsIn(right, name)], rules, marks.get(name));
    // Each list's rows are its own: the table ties a list's name to its rows.
    merged[name] = rows.sort(rules.compareRows as (x: object, y: object) => number);
  }
  for (const name of singleNames) {
    merged[name] = joinMaybe(
      left[name] as MergeRow | undefined,
      right[name] as MergeRow | undefined,
      journalSingles[name],
    );
  }
  for (const name of new Set([...Object.keys(left), ...Object.keys(right)])) {
    if (!knownNames.has(name)) merged[name] = mergeUnknown(partOf(left, name), partOf(right, name), marks.get(name));
  }
  return tidy({ ...merged, removed });
}

/**
 * Leaves out the marks of what was removed.
 * @param journal any journal.
 * @returns a journal without the marks of removed things, and without rows that a file of version 1 marks as removed.
 */
export function visibleJournal(journal: Journal): Journal {
  const { removed: _marks, ...rest } = journal;
  const lists = collectionNames.flatMap((name) => {
    const rows = rest[name];
    return rows === undefined ? [] : [[name, (rows as MergeRow[]).filter((row) => row.removed !== true)]];
  });
  return { ...rest, ...Object.fromEntries(lists) };
}

/**
 * A journal in which nothing has been done yet.
 * @returns an empty journal
 */
export function createJournal(): Journal {
  return { drills: [], days: [], weeks: [] };
}

/** Leaves out what is empty; drills, days and weeks are always there. */
function tidy(content: Content): Journal {
  const isShown = ([name, value]: [string, unknown]): boolean =>
    value !== undefined && !(Array.isArray(value) && value.length === 0 && knownNames.has(name));
  return { ...createJournal(), ...Object.fromEntries(Object.entries(content).filter(isShown)) };
}

function rowsIn(journal: Content, name: string): readonly MergeRow[] {
  const rows = journal[name];
  return Array.isArray(rows) ? rows : [];
}

function union(
  rows: readonly MergeRow[],
  rules: MergeRules,
  marks: Marks extends ReadonlyMap<string, infer M> ? M | undefined : never,
): MergeRow[] {
  const things = new Map<string, MergeRow>();
  for (const row of rows) {
    if (row.removed === true) continue; // it is among the marks
    const key = String(row[rules.keyName ?? '']);
    const known = things.get(key);
    const plain = plainRow(row, rules);
    things.set(key, known === undefined ? plain : joinRows(known, plain, rules));
  }
  if (marks === undefined) return [...things.values()];
  return [...things].flatMap(([key, row]) => {
    const mark = marks.get(key);
    const left = mark === undefined ? row : outliving(row, mark, rules);
    return left === undefined ? [] : [left];
  });
}

/** What a removal leaves of a row. */
function outliving(row: MergeRow, { at }: RemovalMark, rules: MergeRules): MergeRow | undefined {
  if (rules.kind === 'page') return writtenAfter(row, at, rules);
  return compareInstants(row.restoredAt, at) > 0 ? row : undefined;
}

function joinMaybe<T extends MergeRow>(a: T | undefined, b: T | undefined, rules: MergeRules): T | undefined {
  return a === undefined || b === undefined ? (a ?? b) : joinRows(a, b, rules);
}

/** Lists of things with ids are merged as things, and win over anything else; of two other values the greater text wins. */
function mergeUnknown(a: unknown, b: unknown, marks: ReadonlyMap<string, RemovalMark> | undefined): unknown {
  const rows = [a, b].flatMap((one) => (isThings(one) ? one : []));
  if (isThings(a) || isThings(b)) {
    return union(rows, unknownThings, marks).sort((x, y) => compareText(String(x.id), String(y.id)));
  }
  if (a === undefined || b === undefined) return a === undefined ? b : a;
  return canonicalText(a) >= canonicalText(b) ? a : b;
}

/** A part of a journal by a name that a file chose: 'constructor' is no part where nobody wrote it. */
function partOf(journal: Content, name: string): unknown {
  return Object.hasOwn(journal, name) ? journal[name] : undefined;
}

function isThings(value: unknown): value is readonly MergeRow[] {
  return Array.isArray(value) && value.every((one) => typeof Object(one).id === 'string');
}

/** The marks of a journal, and what version 1 wrote in their place: whole rows that say that they are removed. */
function marksIn(journal: Content): RemovalMark[] {
  const old = [...Object.keys(journal)].flatMap((of) =>
    of === 'removed'
      ? []
      : rowsIn(journal, of).flatMap((row) =>
          row?.removed === true ? [{ of, key: String(row[keyNameOf(of)]), at: row.editedAt ?? '' }] : [],
        ),
  );
  return [...rowsIn(journal, 'removed'), ...old] as unknown as RemovalMark[];
}

function keyNameOf(of: string): string {
  return Object.hasOwn(journalCollections, of) ? journalCollections[of as CollectionName].keyName : 'id';
}

function unionMarks(marks: readonly RemovalMark[]): RemovalMark[] {
  const latest = new Map<string, RemovalMark>();
  for (const mark of marks) {
    const name = JSON.stringify([mark.of, mark.key]);
    const known = latest.get(name);
    if (known === undefined || compareMarks(known, mark) < 0) latest.set(name, mark);
  }
  return [...latest.values()].sort((a, b) => compareText(a.of, b.of) || compareText(a.key, b.key));
}

function compareMarks(a: RemovalMark, b: RemovalMark): number {
  return compareStamps(a.at, b.at) || compareText(canonicalText(a), canonicalText(b));
}

function byList(marks: readonly RemovalMark[]): Marks {
  const lists = new Map<string, Map<string, RemovalMark>>();
  for (const mark of marks) {
    const list = lists.get(mark.of) ?? new Map<string, RemovalMark>();
    lists.set(mark.of, list.set(mark.key, mark));
  }
  return lists;
}
