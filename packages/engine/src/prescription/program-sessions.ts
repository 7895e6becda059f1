import type { DrillRecord } from '../journal/drill-record.ts';
import type { Program } from '../program/program.ts';
import { dayNumber, mondayNumber } from '../units/calendar-day.ts';

/** A drill record with its day as a number. */
export interface PastSession {
  record: DrillRecord;
  /** Days from 1970-01-01. */
  day: number;
  /** Days from 1970-01-01 to the Monday of its week. */
  monday: number;
}

/**
 * The sessions of one program, in order of time.
 * @param program whose sessions; matched by `id` where program and record both have one, else by title
 * @param records drill records in any order, other programs' allowed
 * @param today days from 1970-01-01; later records are counted, not used
 * @returns the sessions up to today, and how many lie in the future
 */
export function sessionsOf(
  program: Program,
  records: readonly DrillRecord[],
  today: number,
): { sessions: PastSession[]; futureCount: number } {
  const sessions: PastSession[] = [];
  let futureCount = 0;
  for (const record of records) {
    if (record.removed || !isOf(program, record)) continue;
    const day = dayNumber(record.date);
    if (day > today) futureCount++;
    else sessions.push({ record, day, monday: mondayNumber(day) });
  }
  sessions.sort(
    (a, b) => a.day - b.day || compare(a.record.startedAt, b.record.startedAt) || compare(a.record.id, b.record.id),
  );
  return { sessions, futureCount };
}

function isOf(program: Program, record: DrillRecord): boolean {
  if (program.id !== undefined && record.programId !== undefined) return program.id === record.programId;
  return program.title === record.program;
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
