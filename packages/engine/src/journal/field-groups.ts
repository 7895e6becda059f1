import { canonicalText, compareInstants, isSame } from './edit-order.ts';
import { compareStamps, laterStamp } from './stamp.ts';

/** Any row of a journal, seen as what a merge needs of it. */
export type MergeRow = Readonly<Record<string, unknown>> & {
  /** When it was last changed. */
  readonly editedAt?: string;
  /** Stamps of groups that were not changed last: by group; also of groups that were emptied. */
  readonly edits?: Readonly<Record<string, string>>;
  /** When it was put back after a removal. */
  readonly restoredAt?: string;
  /** As rows of version 1 said that they were removed; such a row becomes a mark. */
  readonly removed?: true;
};

/** One group of fields that are edited together: what it says, and since when. */
export interface FieldGroup {
  readonly value: Readonly<Record<string, unknown>>;
  /** Empty where nobody knows. */
  readonly stamp: string;
}

/** How the rows of one collection are merged. */
export interface MergeRules {
  /** `thing`: made once, with a life that a removal ends; `page`: of the calendar, emptied by a removal and never gone. */
  readonly kind?: 'thing' | 'page';
  /** The field that tells rows apart; none for a value of which there is only one. */
  readonly keyName?: string;
  /** The group of a field, where it is not a group of its own. */
  readonly groups?: Readonly<Record<string, string>>;
  /** Orders two versions of one group where something counts for more than their stamps. */
  readonly compareGroups?: Readonly<Record<string, (a: FieldGroup, b: FieldGroup) => number>>;
}

const aside: ReadonlySet<string> = new Set(['editedAt', 'edits', 'restoredAt', 'removed']);

/**
 * Takes a row apart into the groups of fields that are edited together. A field that no rule names is a group of its own, so that also what
 * only a newer app knows is merged and kept.
 * @param row any row. @param rules of its collection.
 * @returns groups by name; one that was emptied is there with its stamp and no fields.
 */
export function groupsOf(row: MergeRow, rules: MergeRules): Map<string, FieldGroup> {
  const values = new Map<string, Record<string, unknown>>();
  for (const [field, value] of Object.entries(row)) {
    if (value === undefined || field === rules.keyName || aside.has(field)) continue;
    const name = groupName(field, rules);
    const known = values.get(name);
    if (known === undefined) values.set(name, { [field]: value });
    else known[field] = value;
  }
  const groups = new Map<string, FieldGroup>();
  for (const [name, value] of values) groups.set(name, { value, stamp: stampOf(row, name) ?? row.editedAt ?? '' });
  for (const [name, stamp] of Object.entries(row.edits ?? {})) {
    if (!groups.has(name) && stamp !== '') groups.set(name, { value: {}, stamp });
  }
  return groups;
}

/**
 * Puts a row together from its groups.
 * @param key the row's key, by its name; empty where there is only one of its kind.
 * @param groups by name.
 * @param editedAt when anything of it was last changed.
 * @param restoredAt when it was put back after a removal.
 * @returns the row: fields in order of their names, stamps only of groups that were not changed last.
 */
export function rowOf(
  key: Readonly<Record<string, unknown>>,
  groups: ReadonlyMap<string, FieldGroup>,
  editedAt: string | undefined,
  restoredAt?: string,
): MergeRow {
  const named = [...groups].sort(([a], [b]) => (a < b ? -1 : 1));
  const edits = named.flatMap(([name, { value, stamp }]) =>
    Object.keys(value).length === 0 || stamp !== (editedAt ?? '') ? [[name, stamp]] : [],
  );
  return {
    ...key,
    ...Object.fromEntries(named.flatMap(([, { value }]) => Object.entries(value))),
    ...(editedAt === undefined || editedAt === '' ? {} : { editedAt }),
    ...(edits.length === 0 ? {} : { edits: Object.fromEntries(edits) }),
    ...(restoredAt === undefined ? {} : { restoredAt }),
  };
}

/**
 * Merges two versions of one row: of each group of fields the later version. A thing that was put back after a removal wins over all that
 * it was before; a page has no such life.
 * @param a one version. @param b another, of the same key.
 * @param rules of their collection.
 * @returns a or b itself where they say the same, else a new row.
 */
export function joinRows<T extends MergeRow>(a: T, b: T, rules: MergeRules): T {
  if (a === b || isSame(a, b)) return a;
  const byLife = rules.kind === 'page' ? 0 : compareStamps(a.restoredAt, b.restoredAt);
  if (byLife !== 0) return byLife > 0 ? a : b;
  const groups = groupsOf(a, rules);
  for (const [name, theirs] of groupsOf(b, rules)) {
    const ours = groups.get(name);
    if (ours === undefined || compareGroup(ours, theirs, rules.compareGroups?.[name]) < 0) groups.set(name, theirs);
  }
  return rowOf(
    keyOf(a, rules),
    groups,
    laterStamp(a.editedAt, b.editedAt),
    rules.kind === 'page' ? undefined : laterStamp(a.restoredAt, b.restoredAt),
  ) as T;
}

/**
 * Writes a row in the one way in which a merge writes it, so that a row which met others that are gone again is the same as one that met nobody.
 * @param row any row. @param rules of its collection.
 * @returns the row itself where it is written so.
 */
export function plainRow<T extends MergeRow>(row: T, rules: MergeRules): T {
  const hasLife = rules.kind === 'page' && row.restoredAt !== undefined;
  if (row.edits === undefined && row.editedAt !== '' && !hasLife) return row;
  const life = rules.kind === 'page' ? undefined : row.restoredAt;
  const plain = rowOf(keyOf(row, rules), groupsOf(row, rules), row.editedAt, life) as T;
  return isSame(row, plain) ? row : plain;
}

/**
 * Leaves of a page only what was written after an instant: each group of fields by its own stamp, and the page's own stamp alike.
 * @param row any page. @param at the instant, ISO 8601. @param rules of its collection.
 * @returns the row itself if all of it is later; undefined if nothing is.
 */
export function writtenAfter<T extends MergeRow>(row: T, at: string, rules: MergeRules): T | undefined {
  const groups = groupsOf(row, rules);
  const later = new Map([...groups].filter(([, { stamp }]) => compareInstants(stamp, at) > 0));
  const editedAt = compareInstants(row.editedAt, at) > 0 ? row.editedAt : undefined;
  if (later.size === 0 && editedAt === undefined) return undefined;
  if (later.size === groups.size && editedAt === row.editedAt) return row;
  return rowOf(keyOf(row, rules), later, editedAt) as T;
}

/**
 * The latest stamp that a row carries.
 * @param row any row.
 * @returns the stamp; undefined where it carries none.
 */
export function latestStamp(row: MergeRow): string | undefined {
  return [row.editedAt, row.restoredAt, ...Object.values(row.edits ?? {})].reduce(laterStamp, undefined);
}

function groupName(field: string, { groups }: MergeRules): string {
  return groups && Object.hasOwn(groups, field) ? (groups[field] ?? field) : field;
}

function stampOf({ edits }: MergeRow, name: string): string | undefined {
  return edits && Object.hasOwn(edits, name) ? edits[name] : undefined;
}

function keyOf(row: MergeRow, { keyName }: MergeRules): Record<string, unknown> {
  return keyName === undefined ? {} : { [keyName]: row[keyName] };
}

function compareGroup(a: FieldGroup, b: FieldGroup, first?: (a: FieldGroup, b: FieldGroup) => number): number {
  const byRule = first?.(a, b) ?? 0;
  if (byRule !== 0) return byRule;
  const byStamp = compareStamps(a.stamp, b.stamp);
  if (byStamp !== 0) return byStamp;
  const [left, right] = [canonicalText(a.value), canonicalText(b.value)];
  return left === right ? 0 : left < right ? -1 : 1;
}
