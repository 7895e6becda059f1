import { journalCollections } from '../journal/collections.ts';
import type { DrillRecord } from '../journal/drill-record.ts';
import { joinRows } from '../journal/field-groups.ts';
import type { DayEntry } from '../journal/journal.ts';
import { dayNumberOf } from '../units/calendar-day.ts';
import { instantMs } from '../units/instant.ts';
import type { LoggedDay } from './logged-day.ts';

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
  marks: Marks;
  entries: readonly DayEntry[];
  entryMarks: readonly Marks[];
  byId: Map<string, DrillRecord>;
}

// The first record names the archer, so that a squad's journals do not push each other out. The last two are kept of each: what comes next is
// often asked with one drill more than there is.
const kept = new WeakMap<DrillRecord, readonly [KeptLog, KeptLog?]>();

/**
 * Puts a journal into days. One version of each record counts, the later edit; removed things are left out. A day that is as it was
 * before is the same object as before, so that what was made of it can be kept.
 * @param records drill records in any order
 * @param entries diary entries in any order
 * @param past the day that represents everything before these
 * @returns the days in order, later ones than today too
 * @throws RangeError where a record or an entry is of the past that is folded already
 */
export function logDays(records: readonly DrillRecord[], entries: readonly DayEntry[] = [], past?: LoggedDay): DayLog {
  const log = logOf(records, entries);
  return past ? afterPast(log, past) : log;
}

const keptAfter = new WeakMap<readonly LoggedDay[], { past: LoggedDay; log: DayLog }>();

function afterPast({ days, impossibleDates }: DayLog, past: LoggedDay): DayLog {
  const known = keptAfter.get(days);
  if (known?.past === past) return known.log;
  const [first] = days;
  if (first && first.day <= past.day) {
    throw new RangeError(`something of day ${first.day} is given beside a past folded up to day ${past.day}`);
  }
  const log = { days: [past, ...days], impossibleDates };
  keptAfter.set(days, { past, log });
  return log;
}

/**
 * How many days of a log are over or run on a day.
 * @param days the journal by days
 * @param today days from 1970-01-01
 * @returns their count
 * @throws RangeError where that day, or the one before it, is folded into the past
 */
export function countUntil(days: readonly LoggedDay[], today: number): number {
  const [first] = days;
  if (first?.isPast && today <= first.day + 1) {
    throw new RangeError(`day ${today} is asked for beside a past folded up to day ${first.day}`);
  }
  let count = days.length;
  while (count > 0 && days[count - 1]!.day > today) count--;
  return count;
}

function logOf(records: readonly DrillRecord[], entries: readonly DayEntry[]): DayLog {
  const first = records[0];
  if (first === undefined) return build([], entries, undefined);
  const logs = kept.get(first) ?? [];
  for (const known of logs) {
    const found = known && goOn(known, records, entries);
    if (!known || !found) continue;
    const other = found.records.length === known.records.length ? logs.find((one) => one !== known) : known;
    if (found !== logs[0]) kept.set(first, [found, other]);
    return found;
  }
  const built = build(records, entries, logs[0]);
  kept.set(first, [built, logs[0]]);
  return built;
}

/** A known log with what came since; undefined where that changes more than a few days. */
function goOn(known: KeptLog, records: readonly DrillRecord[], entries: readonly DayEntry[]): KeptLog | undefined {
  if (records.length < known.records.length) return undefined;
  const before = withEntries(known, entries);
  if (before === undefined || knownCount(before, records) < before.records.length) return undefined;
  return records.length === before.records.length ? before : append(before, records);
}

/** The same log with other diary entries at the end of the list; undefined where that changes more than a few days. */
function withEntries(before: KeptLog, entries: readonly DayEntry[]): KeptLog | undefined {
  let same = 0;
  while (same < entries.length && before.entries[same] === entries[same] && isEntryMarked(before, same)) same++;
  if (same === entries.length && same === before.entries.length) return before;
  const gone = before.entries.slice(same);
  const come = entries.slice(same);
  if (gone.length + come.length > 32) return undefined;
  const dates = new Set([...gone, ...come].map(({ date }) => date));
  if (entries.some(({ date }, at) => at < same && dates.has(date))) return undefined;
  const entryOf = entriesByDay(come);
  const days = [...before.days];
  for (const date of dates) {
    const day = dayNumberOf(date);
    if (day === undefined) continue;
    let at = days.length;
    while (at > 0 && days[at - 1]!.day >= day) at--;
    const drills = days[at]?.day === day ? days[at]!.drills : [];
    const entry = entryOf.get(day);
    const now: LoggedDay[] = entry || drills.length > 0 ? [logged(day, drills, entry)] : [];
    days.splice(at, days[at]?.day === day ? 1 : 0, ...now);
  }
  const marks = [...before.entryMarks.slice(0, same), ...come.map(entryMarks)];
  return { ...before, entries: [...entries], entryMarks: marks, days };
}

function isEntryMarked({ entries, entryMarks: marks }: KeptLog, at: number): boolean {
  const { date, pain, arrows, work, readiness, removed, editedAt } = entries[at]!;
  const mark = marks[at]!;
  if (date !== mark[0] || pain !== mark[1] || arrows !== mark[2] || work !== mark[3]) return false;
  return readiness === mark[4] && removed === mark[5] && editedAt === mark[6];
}

function isSameList<T>(a: readonly T[], b: readonly T[]): boolean {
  return a.length === b.length && a.every((one, at) => one === b[at]);
}

/** How many values there are for each record, one after the other in one list: a list of ten years is read at every prescription. */
const MARKS = 8;
type Marks = unknown[];

function setMarks(
  marks: Marks,
  at: number,
  { reps, date, effort, pain, removed, program, prescribedReps }: DrillRecord,
): void {
  const from = at * MARKS;
  marks[from] = reps;
  marks[from + 1] = reps.length;
  marks[from + 2] = date;
  marks[from + 3] = effort;
  marks[from + 4] = pain;
  marks[from + 5] = removed;
  marks[from + 6] = program;
  marks[from + 7] = prescribedReps;
}

function isMarked(record: DrillRecord, marks: Marks, at: number): boolean {
  const { reps, date, effort, pain, removed, program, prescribedReps } = record;
  const from = at * MARKS;
  if (reps !== marks[from] || reps.length !== marks[from + 1] || date !== marks[from + 2]) return false;
  if (effort !== marks[from + 3] || pain !== marks[from + 4]) return false;
  return removed === marks[from + 5] && program === marks[from + 6] && prescribedReps === marks[from + 7];
}

/** The same of a diary entry. */
function entryMarks({ date, pain, arrows, work, readiness, removed, editedAt }: DayEntry): Marks {
  return [date, pain, arrows, work, readiness, removed, editedAt];
}

function knownCount({ records: known, marks }: KeptLog, records: readonly DrillRecord[]): number {
  const most = Math.min(known.length, records.length);
  let at = 0;
  while (at < most && records[at] === known[at] && isMarked(records[at]!, marks, at)) at++;
  return at;
}

/** Adds what came after the known records; undefined where that changes more than a few days. */
function append(before: KeptLog, records: readonly DrillRecord[]): KeptLog | undefined {
  const added = records.slice(before.records.length);
  if (added.length > 32) return undefined;
  const { byId } = before;
  const days = [...before.days];
  // Handed on, not copied, to the first that goes on from there.
  const isFirst = before.marks.length === before.records.length * MARKS;
  const marks = isFirst ? before.marks : before.marks.slice(0, before.records.length * MARKS);
  for (const record of added) {
    if (byId.has(record.id)) return undefined;
    const day = record.removed ? undefined : dayNumberOf(record.date);
    if (day === undefined) return undefined;
    let at = days.length;
    while (at > 0 && days[at - 1]!.day >= day) at--;
    const known = days[at]?.day === day ? days[at] : undefined;
    const drills = inOrder([...(known?.drills ?? []), record], day);
    days.splice(at, known ? 1 : 0, logged(day, drills, known?.entry));
    byId.set(record.id, record);
    setMarks(marks, marks.length / MARKS, record);
  }
  return { ...before, records: [...records], marks, days };
}

function build(records: readonly DrillRecord[], entries: readonly DayEntry[], before: KeptLog | undefined): KeptLog {
  const byId = oneOfEach(records);
  const impossibleDates: string[] = [];
  const loose: LooseDay[] = [];
  for (const record of byId.values()) {
    if (record.removed) continue;
    const day = dayNumberOf(record.date);
    if (day === undefined) impossibleDates.push(String(record.date));
    else loose.push(logged(day, [record], undefined));
  }
  for (const [day, entry] of entriesByDay(entries)) loose.push(logged(day, [], entry));
  const days = joined(loose);
  const marks: Marks = new Array(records.length * MARKS);
  for (let at = 0; at < records.length; at++) setMarks(marks, at, records[at]!);
  return {
    records: [...records],
    entries: [...entries],
    entryMarks: entries.map(entryMarks),
    ...{ marks, byId, impossibleDates: impossibleDates.sort() },
    // A record that was changed in place makes its day a new one.
    days: before && isUnchanged(before) ? sameDays(days, before.days) : days,
  };
}

/** By id, in order; of a record that is there in several versions, the one that counts. */
function oneOfEach(records: readonly DrillRecord[]): Map<string, DrillRecord> {
  const byId = new Map<string, DrillRecord>();
  for (const record of records) byId.set(record.id, record);
  if (byId.size === records.length) return byId;
  byId.clear();
  for (const record of records) {
    const other = byId.get(record.id);
    byId.set(record.id, other ? oneOf(other, record) : record);
  }
  return byId;
}

interface LooseDay extends LoggedDay {
  drills: DrillRecord[];
}

/** One a day, in order. Most journals are in order, with one drill a day, and stay as they are. */
function joined(loose: LooseDay[]): LoggedDay[] {
  if (loose.every(({ day }, at) => at === 0 || loose[at - 1]!.day < day)) return loose;
  const days: LooseDay[] = [];
  for (const one of loose.sort((a, b) => a.day - b.day)) {
    const last = days.at(-1);
    if (last?.day !== one.day) days.push(one);
    else {
      last.drills.push(...one.drills);
      last.entry ??= one.entry;
    }
  }
  for (const { day, drills } of days) inOrder(drills, day);
  return days;
}

/** The same days, as the objects that they were before where nothing of them changed. */
function sameDays(days: readonly LoggedDay[], before: readonly LoggedDay[]): LoggedDay[] {
  const known = new Map(before.map((one) => [one.day, one]));
  return days.map((one) => {
    const same = known.get(one.day);
    return same && same.entry === one.entry && isSameList(same.drills, one.drills) ? same : one;
  });
}

function logged<D extends readonly DrillRecord[]>(day: number, drills: D, entry: DayEntry | undefined) {
  return { day, drills, entry, summaries: undefined };
}

function isUnchanged(before: KeptLog): boolean {
  const { records, entries, marks } = before;
  return records.every((one, at) => isMarked(one, marks, at)) && entries.every((_, at) => isEntryMarked(before, at));
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
    const day = dayNumberOf(entry.date);
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
