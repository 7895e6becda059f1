import type { DrillRecord } from '../journal/drill-record.ts';
import { compareInstants } from '../journal/edit-order.ts';
import { heldOf } from '../journal/held-of.ts';
import type { DayEntry, Journal } from '../journal/journal.ts';
import { visibleJournal } from '../journal/merge-journals.ts';
import { compareText } from '../journal/stamp.ts';
import { escapeText, formatCalendarDay, formatCalendarLines, formatUtc, readUtc } from './calendar-lines.ts';

/** What a person reads of an event. */
export interface EventWords {
  summary: string;
  description: string;
}

/** How a calendar says what was done; `calendarWords` of `@larkhold/words` gives it in every language. */
export interface CalendarWords {
  /** A drill; times are milliseconds: `heldMs` at full draw, `seenMs` of that as a camera saw it. Effort 0 to 10 where the archer gave one. */
  drill(drill: {
    program: string;
    heldCount: number;
    repCount: number;
    heldMs: number;
    seenMs: number;
    effort?: number;
  }): EventWords;
  /** A day's arrows and other work, none of them nothing. */
  day(done: { arrows: NonNullable<DayEntry['arrows']>; work: NonNullable<DayEntry['work']> }): string;
}

/** What a calendar file needs. */
export interface CalendarOptions {
  /** The instant it is written, ISO 8601 with offset. */
  madeAt: string;
  /** The language. */
  words: CalendarWords;
  /** Notes are private: they are left out unless this is true. */
  includesNotes?: boolean;
  /** Whose journal it is, where that is known: with it, no event of two archers has one UID. */
  archerId?: string;
}

/**
 * Writes a journal as an iCalendar file: each drill an event at its time, each day with arrows or other work an all-day event. The same drill has
 * the same UID in every file of one archer, so that a calendar takes a second file as an update. Where it is not known whose journal it is, the id of
 * its first drill tells its days from another archer's.
 * @param journal removed things are left out.
 * @param options see `CalendarOptions`.
 * @returns the text: lines end in CRLF and are folded at 75 octets.
 * @throws RangeError if `madeAt` is not an instant.
 * @source RFC 5545, sections 3.1, 3.3.11, 3.6.1, 3.8.
 */
export function formatCalendar(journal: Journal, options: CalendarOptions): string {
  const visible = visibleJournal(journal);
  const owner = options.archerId ?? firstDrillId(visible.drills);
  const stamp = `DTSTAMP:${formatUtc(options.madeAt)}`;
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Larkhold//Journal//EN',
    'CALSCALE:GREGORIAN',
    ...visible.drills.flatMap((record) => drillEvent(record, stamp, options)),
    ...visible.days.flatMap((entry) => dayEvent(entry, stamp, { ...options, archerId: owner })),
    'END:VCALENDAR',
  ];
  return formatCalendarLines(lines);
}

function drillEvent(record: DrillRecord, stamp: string, { includesNotes, archerId, words }: CalendarOptions): string[] {
  const { program, reps, effort } = record;
  const { heldMs, seenMs, fullCount } = heldOf(reps);
  const { summary, description } = words.drill({
    ...{ program, repCount: reps.length, heldCount: fullCount, heldMs, seenMs, effort },
  });
  const note = includesNotes && record.note ? `\n${record.note}` : '';
  return [
    'BEGIN:VEVENT',
    `UID:${uidOf(record.id, archerId)}@drill.larkhold.invalid`,
    stamp,
    ...spanOf(record),
    `SUMMARY:${escapeText(summary)}`,
    `DESCRIPTION:${escapeText(`${description}${note}`)}`,
    ...lastModified(record.editedAt),
    'END:VEVENT',
  ];
}

function dayEvent(entry: DayEntry, stamp: string, { includesNotes, archerId, words }: CalendarOptions): string[] {
  const arrows = (entry.arrows ?? []).filter(({ count }) => count > 0);
  const work = (entry.work ?? []).filter(({ minutes }) => minutes > 0);
  if (arrows.length + work.length === 0) return [];
  return [
    'BEGIN:VEVENT',
    `UID:${uidOf(entry.date, archerId)}@day.larkhold.invalid`,
    stamp,
    `DTSTART;VALUE=DATE:${formatCalendarDay(entry.date)}`,
    `SUMMARY:${escapeText(words.day({ arrows, work }))}`,
    ...(includesNotes && entry.note ? [`DESCRIPTION:${escapeText(entry.note)}`] : []),
    'TRANSP:TRANSPARENT',
    ...lastModified(entry.editedAt),
    'END:VEVENT',
  ];
}

const uidOf = (id: string, owner: string | undefined): string =>
  escapeText(owner === undefined ? id : `${id}.${owner}`);

/** The id of the drill begun first: chance made it, and a longer journal has the same. */
function firstDrillId(drills: readonly DrillRecord[]): string | undefined {
  const first = (a: DrillRecord, b: DrillRecord): DrillRecord =>
    (compareInstants(a.startedAt, b.startedAt) || compareText(a.id, b.id)) <= 0 ? a : b;
  return drills.length === 0 ? undefined : drills.reduce(first).id;
}

function spanOf(record: DrillRecord): string[] {
  const start = readUtc(record.startedAt);
  if (start === undefined) return [`DTSTART;VALUE=DATE:${formatCalendarDay(record.date)}`, 'TRANSP:TRANSPARENT'];
  const end = readUtc(record.endedAt);
  // An end must be after the start (RFC 5545, 3.8.2.2); a clock set back in mid-drill can put it before.
  const isAfter = end !== undefined && compareInstants(record.endedAt, record.startedAt) > 0 && end !== start;
  return isAfter ? [`DTSTART:${start}`, `DTEND:${end}`] : [`DTSTART:${start}`];
}

function lastModified(editedAt: string | undefined): string[] {
  const utc = editedAt === undefined ? undefined : readUtc(editedAt);
  return utc === undefined ? [] : [`LAST-MODIFIED:${utc}`];
}
