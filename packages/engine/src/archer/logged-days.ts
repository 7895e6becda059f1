import { journalCollections } from '../journal/collections.ts';
import type { DrillRecord } from '../journal/drill-record.ts';
import { joinRows } from '../journal/field-groups.ts';
import type { DayEntry } from '../journal/journal.ts';
import { instantMs } from '../units/instant.ts';
import { readDay } from '../units/read-day.ts';

/** What the journal says of one day: its drills in order of their instants, and its diary entry. */
export interface LoggedDay {
  /** Days from 1970-01-01. */
  day: number;
  drills: readonly DrillRecord[];
  entry?: DayEntry;
}

/** The journal by days, and what could not be placed. */
export interface DayLog {
  /** In order; only days of which something is known. */
  days: readonly LoggedDay[];
  /** Dates of drills that no calendar has, as the records give them, sorted. */
  impossibleDates: readonly string[];
}

interface KeptLog extends DayLog {
  records: readonly DrillRecord[];
  /** What of each record may be changed in place by a careless caller; compared before a record counts as known. */
  marks: readonly Mark[];
  entries: readonly DayEntry[];
  byId: ReadonlyMap<string, DrillRecord>;
}

// The first record names the archer, so that a squad's journals do not push each other out.
const kept = new WeakMap<DrillRecord, KeptLog>();

/**
 * Puts a journal into days. One version of each record counts, the later edit; removed things are left out. A day that is as it was
 * before is the same object as before, so that what was made of it can be kept.
 * @param records drill records in any order
 * @param entries diary entries in any order
 * @returns the days in order, later ones than today too
 */
export function logDays(records: readonly DrillRecord[], entries: readonly DayEntry[] = []): DayLog {
  const first = records[0];
  if (first === undefined) return build([], entries, undefined);
  const known = kept.get(first);
  const before = known && withEntries(known, entries);
  if (before !== undefined) {
    const count = knownCount(before, records);
    if (count === before.records.length && count === records.length) {
      kept.set(first, before);
      return before;
    }
    if (count === before.records.length) {
      const longer = append(before, records);
      if (longer) {
        kept.set(first, longer);
        return longer;
      }
    }
  }
  const built = build(records, entries, known);
  kept.set(first, built);
  return built;
}

/** The same log with other diary entries at the end of the list; undefined where that changes more than a few days. */
function withEntries(before: KeptLog, entries: readonly DayEntry[]): KeptLog | undefined {
  let same = 0;
  while (same < entries.length && before.entries[same] === entries[same]) same++;
  if (same === entries.length && same === before.entries.length) return before;
  const gone = before.entries.slice(same);
  const come = entries.slice(same);
  if (gone.length + come.length > 32) return undefined;
  const dates = new Set([...gone, ...come].map(({ date }) => date));
  if (entries.some(({ date }, at) => at < same && dates.has(date))) return undefined;
  const entryOf = entriesByDay(come);
  const days = [...before.days];
  for (const date of dates) {
    const day = readDay(date);
    if (day === undefined) continue;
    let at = days.length;
    while (at > 0 && days[at - 1]!.day >= day) at--;
    const drills = days[at]?.day === day ? days[at]!.drills : [];
    const entry = entryOf.get(day);
    const now: LoggedDay[] = entry ? [{ day, drills, entry }] : drills.length > 0 ? [{ day, drills }] : [];
    days.splice(at, days[at]?.day === day ? 1 : 0, ...now);
  }
  return { ...before, entries: [...entries], days };
}

function isSameList<T>(a: readonly T[], b: readonly T[]): boolean {
  return a.length === b.length && a.every((one, at) => one === b[at]);
}

type Mark = Pick<DrillRecord, 'date' | 'pain' | 'effort' | 'removed' | 'reps'>;

function markOf({ date, pain, effort, removed, reps }: DrillRecord): Mark {
  return { date, pain, effort, removed, reps };
}

function isMarked({ date, pain, effort, removed, reps }: DrillRecord, mark: Mark): boolean {
  if (reps !== mark.reps || date !== mark.date || pain !== mark.pain) return false;
  return effort === mark.effort && removed === mark.removed;
}

function knownCount({ records: known, marks }: KeptLog, records: readonly DrillRecord[]): number {
  const most = Math.min(known.length, records.length);
  for (let at = 0; at < most; at++) {
    const record = records[at]!;
    if (record !== known[at]) return at;
    if (!isMarked(record, marks[at]!)) return at;
  }
  return most;
}

/** Adds what came after the known records; undefined where that changes more than a few days. */
function append(before: KeptLog, records: readonly DrillRecord[]): KeptLog | undefined {
  const added = records.slice(before.records.length);
  if (added.length > 32) return undefined;
  const byId = before.byId as Map<string, DrillRecord>;
  const days = [...before.days];
  for (const record of added) {
    if (byId.has(record.id)) return undefined;
    const day = record.removed ? undefined : readDay(record.date);
    if (day === undefined) return undefined;
    let at = days.length;
    while (at > 0 && days[at - 1]!.day >= day) at--;
    const known = days[at]?.day === day ? days[at] : undefined;
    const drills = inOrder([...(known?.drills ?? []), record], day);
    days.splice(at, known ? 1 : 0, { ...known, day, drills });
    byId.set(record.id, record);
  }
  return { ...before, records: [...records], marks: [...before.marks, ...added.map(markOf)], days, byId };
}

function build(records: readonly DrillRecord[], entries: readonly DayEntry[], before: KeptLog | undefined): KeptLog {
  const byId = new Map<string, DrillRecord>();
  for (const record of records) {
    const other = byId.get(record.id);
    byId.set(record.id, other ? oneOf(other, record) : record);
  }
  const impossibleDates: string[] = [];
  const drillsOf = new Map<number, DrillRecord[]>();
  for (const record of byId.values()) {
    if (record.removed) continue;
    const day = readDay(record.date);
    if (day === undefined) impossibleDates.push(String(record.date));
    else {
      const drills = drillsOf.get(day);
      if (drills) drills.push(record);
      else drillsOf.set(day, [record]);
    }
  }
  const entryOf = entriesByDay(entries);
  const known = new Map(before?.days.map((one) => [one.day, one]));
  const dayNumbers = [...new Set([...drillsOf.keys(), ...entryOf.keys()])].sort((a, b) => a - b);
  const days = dayNumbers.map((day): LoggedDay => {
    const drills = inOrder(drillsOf.get(day) ?? [], day);
    const entry = entryOf.get(day);
    const same = known.get(day);
    if (same && same.entry === entry && isSameList(same.drills, drills)) return same;
    return entry === undefined ? { day, drills } : { day, drills, entry };
  });
  const marks = records.map(markOf);
  // A record that was changed in place makes its day a new one.
  const isStale = before?.records.some((record, at) => !isMarked(record, before.marks[at]!));
  return {
    records: [...records],
    entries: [...entries],
    ...{ marks, byId, impossibleDates: impossibleDates.sort() },
    days: isStale ? days.map((one) => ({ ...one })) : days,
  };
}

function oneOf(a: DrillRecord, b: DrillRecord): DrillRecord {
  if (a === b) return a;
  if (a.removed || b.removed) return a.removed ? a : b;
  return joinRows(a, b, journalCollections.drills);
}

/** Two entries for one day, which a journal does not have, count as their later edit. */
function entriesByDay(entries: readonly DayEntry[]): Map<number, DayEntry> {
  const entryOf = new Map<number, DayEntry>();
  for (const entry of entries) {
    const day = readDay(entry.date);
    if (day === undefined) continue;
    const other = entryOf.get(day);
    entryOf.set(day, other ? joinRows(other, entry, journalCollections.days) : entry);
  }
  for (const [day, { removed }] of entryOf) if (removed) entryOf.delete(day);
  return entryOf;
}

/** By instant, so that travel across time zones does not turn a day round; a start that cannot be read is noon UTC. */
function inOrder(drills: DrillRecord[], day: number): DrillRecord[] {
  if (drills.length < 2) return drills;
  const starts = new Map(
    drills.map((record) => {
      const seconds = instantMs(record.startedAt) / 1000;
      return [record, Number.isFinite(seconds) ? seconds : (day + 0.5) * 86_400];
    }),
  );
  return drills.sort((a, b) => starts.get(a)! - starts.get(b)! || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
}
