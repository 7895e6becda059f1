import type { DrillRecord } from '../journal/drill-record.ts';
import { chooseVersion, compareInstants } from '../journal/edit-order.ts';
import type { Program } from '../program/program.ts';
import { mondayNumber } from '../units/calendar-day.ts';
import { readDay } from './read-day.ts';

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
 * A record whose start cannot be read stands at noon UTC of its date. Versions of one record count once, the later edit.
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
    if (record.removed || !isOf(program, record)) continue;
    const day = readDay(record.date);
    if (day === undefined) impossibleDates.push(String(record.date));
    else if (day > today) futureCount++;
    else {
      const { startedAt, isPlain } = startOf(record);
      sessions.push({ record, day, monday: mondayNumber(day), startedAt, isPlain });
    }
  }
  sessions.sort((a, b) => compareStarts(a, b) || a.day - b.day || compareText(a.record.id, b.record.id));
  return { sessions, futureCount, impossibleDates: impossibleDates.sort(compareText) };
}

interface StartedSession extends PastSession {
  startedAt: string;
  /** Written as programs write it, so that two of one length compare as text: much quicker over years. */
  isPlain: boolean;
}

const plainInstant = /^\d{4}-\d\d-\d\dT(?:[01]\d|2[0-3]):[0-5]\d:[0-5]\d(?:\.\d+)?Z$/;

/** `date` is known to be a day; an instant of that day needs no second look at the calendar. */
function startOf({ startedAt, date }: DrillRecord): { startedAt: string; isPlain: boolean } {
  const isPlain = plainInstant.test(startedAt);
  const isReadable = (isPlain && startedAt.startsWith(date)) || compareInstants(startedAt, undefined) > 0;
  return isReadable ? { startedAt, isPlain } : { startedAt: `${date}T12:00:00Z`, isPlain: true };
}

function compareStarts(a: StartedSession, b: StartedSession): number {
  const areAlike = a.isPlain && b.isPlain && a.startedAt.length === b.startedAt.length;
  return areAlike ? compareText(a.startedAt, b.startedAt) : compareInstants(a.startedAt, b.startedAt);
}

function versionsOf(records: readonly DrillRecord[]): Iterable<DrillRecord> {
  const byId = new Map<string, DrillRecord>();
  for (const record of records) {
    const other = byId.get(record.id);
    byId.set(record.id, other ? chooseVersion(other, record) : record);
  }
  return byId.values();
}

function isOf(program: Program, record: DrillRecord): boolean {
  if (program.id !== undefined && record.programId !== undefined) return program.id === record.programId;
  return program.title === record.program;
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
