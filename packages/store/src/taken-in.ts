import { isSame, type Journal, mergeJournals, type Program } from '@larkhold/engine';
import type { Change, Found, Table } from './adapter.ts';
import type { Kit } from './kit.ts';
import { kitChanges } from './kit-changes.ts';
import { type StampParts, stampChange } from './stamp-change.ts';
import { journalChanges, journalOf, journalTables, put, putRow, putSingle } from './stored-rows.ts';

/** What comes in at once: a file of another device, a backup, a coach's answer. */
export interface Incoming {
  /** Merged into the stored one as `mergeJournals` says. */
  journal?: Journal;
  /** Each with an id; one of the same id is replaced. */
  programs?: readonly Program[];
  /** Values of the kit that change. */
  kit?: Partial<Kit>;
}

/** One value that came in. */
interface TakenValue {
  table: Table;
  key: string;
  /** As it was; undefined where there was none. */
  before: unknown;
  /** As the import left it. */
  after: unknown;
}

/** What an import changed: enough to take it back. */
export interface TakenIn {
  readonly values: readonly TakenValue[];
}

/** A value that was left as it is, because it has changed since. */
export interface LeftValue {
  table: Table;
  key: string;
}

/** The tables that an import touches. */
export const incomingTables: readonly Table[] = journalTables;

/**
 * The changes that take something in.
 * @param incoming what comes in
 * @param kit the kit as it is stored
 * @param parts see `StampParts`; `found` holds `incomingTables`, checked
 * @returns the changes, in order
 * @throws RefusedValueError where a value is not what its table holds
 */
export function takeIn({ journal, programs = [], kit: patch }: Incoming, kit: Kit, parts: StampParts): Change[] {
  const stored = journalOf(parts.found);
  return [
    ...(journal ? journalChanges(stored, mergeJournals(stored, journal)) : []),
    ...programs.flatMap((program) =>
      stampChange(putRow('opened', { id: program.id, program, editedAt: parts.now }), parts),
    ),
    ...(patch ? kitChanges(kit, { ...kit, ...patch }, parts) : []),
  ];
}

/**
 * What changes do to values, to take it back later.
 * @param found what was stored before
 * @param changes what was done
 * @returns each value before and after
 */
export function takenBy(found: Found, changes: readonly Change[]): TakenIn {
  return {
    values: changes.flatMap((change) => {
      if (change.do === 'clear') return [];
      const { table, key } = change;
      return [
        { table, key, before: found.get(table)?.get(key), after: change.do === 'put' ? change.value : undefined },
      ];
    }),
  };
}

/**
 * The changes that take an import back. Only what still is as the import left it goes back; of the kit, value by value.
 * @param taken what the import changed
 * @param parts see `StampParts`; `found` holds `incomingTables`, checked
 * @returns the changes, and what is left because it has changed since
 */
export function takeBack(taken: TakenIn, parts: StampParts): { changes: Change[]; left: LeftValue[] } {
  const changes: Change[] = [];
  const left: LeftValue[] = [];
  for (const { table, key, before, after } of taken.values) {
    const now = parts.found.get(table)?.get(key);
    if (isSame(now, after)) {
      changes.push(before === undefined ? { table, do: 'remove', key } : put(table, key, before));
    } else if (table === 'single' && key === 'kit') {
      const { kit, isWhole } = kitBack(Object(before), Object(after), Object(now));
      changes.push(putSingle('kit', kit));
      if (!isWhole) left.push({ table, key });
    } else if (table === 'single' && key === 'ownKit') {
      // What is left of it is reported with the kit, of which it is a part.
      const { kit: own } = kitBack(Object(before), Object(after), Object(now));
      changes.push(...stampChange(putSingle('ownKit', { ...own, editedAt: parts.now }), parts));
    } else if (!isSame(now, before)) {
      left.push({ table, key });
    }
  }
  return { changes, left };
}

function kitBack(before: object, after: object, now: object): { kit: object; isWhole: boolean } {
  const kit: Record<string, unknown> = { ...now };
  let isWhole = true;
  for (const name of new Set([...Object.keys(before), ...Object.keys(after)])) {
    const [was, came, is] = [before, after, now].map((one): unknown => Reflect.get(one, name));
    if (isSame(was, came)) continue;
    if (isSame(is, came)) kit[name] = was;
    else if (!isSame(is, was)) isWhole = false;
  }
  return { kit, isWhole };
}
