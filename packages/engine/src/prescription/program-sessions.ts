import { journalCollections } from '../journal/collections.ts';
import type { DrillRecord } from '../journal/drill-record.ts';
import { joinRows } from '../journal/field-groups.ts';
import { isOfProgram } from '../journal/is-of-program.ts';
import type { Program } from '../program/program.ts';
import { dayNumberOf, mondayNumber } from '../units/calendar-day.ts';
import { instantMs } from '../units/instant.ts';

/** A drill record with its day as a number. */
export interface PastSession {
  record: DrillRecord;
  /** Days from 1970-01-01. */
  day: number;
  /** Days from 1970-01-01 to the Monday of its week. */
  monday: number;
}

/** The sessions that count, in order of time, and what was left out. */
export interface ProgramSessions {
  sessions: PastSession[];
  /** Records dated after today. */
  futureCount: number;
  /** Dates that no calendar has, as the records give them, sorted. */
  impossibleDates: string[];
}

/**
 * The sessions of one program, in the order in which they really happened: by instant, so that travel across time zones does not turn it round.
 * A record whose start cannot be read counts as of noon UTC of its date. Versions of one record count once, merged as journals are.
 * @param program whose sessions; matched by `id` where program and record both have one, else by title
 * @param records drill records in any order, other programs' allowed
 * @param today days from 1970-01-01; later records are counted, not used
 * @returns the sessions up to today, and what was left out
 */
export function sessionsOf(program: Program, records: readonly DrillRecord[], today: number): ProgramSessions {
  const sessions: StartedSession[] = [];
  const impossibleDates: string[] = [];
  let futureCount = 0;
  for (const record of versionsOf(records)) {
    if (record.removed || !isOfProgram(record, program)) continue;
    const day = dayNumberOf(record.date);
    if (day === undefined) impossibleDates.push(String(record.date));
    else if (day > today) futureCount++;
    else sessions.push({ record, day, monday: mondayNumber(day), startedSeconds: startedSeconds(record, day) });
  }
  sessions.sort(
    (a, b) => a.startedSeconds - b.startedSeconds || a.day - b.day || compareText(a.record.id, b.record.id),
  );
  return { sessions, futureCount, impossibleDates: impossibleDates.sort(compareText) };
}

interface StartedSession extends PastSession {
  /** From 1970-01-01 UTC; found once for each, for sorting looks at it many times. */
  startedSeconds: number;
}

function startedSeconds({ startedAt }: DrillRecord, day: number): number {
  const seconds = instantMs(startedAt) / 1000;
  return Number.isFinite(seconds) ? seconds : (day + 0.5) * 86_400;
}

function versionsOf(records: readonly DrillRecord[]): Iterable<DrillRecord> {
  const byId = new Map<string, DrillRecord>();
  for (const record of records) {
    const other = byId.get(record.id);
    byId.set(record.id, other ? oneOf(other, record) : record);
  }
  return byId.values();
}

function oneOf(a: DrillRecord, b: DrillRecord): DrillRecord {
  if (a.removed || b.removed) return a.removed ? a : b;
  return joinRows(a, b, journalCollections.drills);
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
