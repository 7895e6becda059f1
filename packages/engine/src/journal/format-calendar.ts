import { addToInstant } from '../units/instant.ts';
import type { DrillRecord } from './drill-record.ts';
import { compareInstants } from './edit-order.ts';
import type { DayEntry, Journal } from './journal.ts';
import { visibleJournal } from './merge-journals.ts';

/** What a calendar file needs to be told. */
export interface CalendarOptions {
  /** The instant it is written, ISO 8601 with offset. */
  madeAt: string;
  /** Notes are private: they are left out unless this is true. */
  includesNotes?: boolean;
}

/**
 * Writes a journal as an iCalendar file: each drill an event at its time, each day with arrows or other work an all-day event. The same drill has
 * the same UID in every file, so that a calendar takes a second file as an update.
 * @param journal removed things are left out.
 * @param options see `CalendarOptions`.
 * @returns the text: lines end in CRLF and are folded at 75 octets.
 * @throws RangeError if `madeAt` is not an instant.
 * @source RFC 5545, sections 3.1, 3.3.11, 3.6.1, 3.8.
 */
export function formatCalendar(journal: Journal, options: CalendarOptions): string {
  const visible = visibleJournal(journal);
  const stamp = `DTSTAMP:${formatUtc(options.madeAt)}`;
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Larkhold//Journal//EN',
    'CALSCALE:GREGORIAN',
    ...visible.drills.flatMap((record) => drillEvent(record, stamp, options.includesNotes === true)),
    ...visible.days.flatMap((entry) => dayEvent(entry, stamp, options.includesNotes === true)),
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${foldLine(line)}\r\n`).join('');
}

function drillEvent(record: DrillRecord, stamp: string, includesNotes: boolean): string[] {
  const heldCount = record.reps.filter((rep) => rep.outcome === 'held').length;
  const holdSeconds = Math.round(record.reps.reduce((sum, rep) => sum + rep.heldMs, 0) / 1000);
  const effort = record.effort === undefined ? '' : ` Effort ${record.effort} of 10.`;
  const note = includesNotes && record.note ? `\n${record.note}` : '';
  return [
    'BEGIN:VEVENT',
    `UID:${escapeText(record.id)}@drill.larkhold.invalid`,
    stamp,
    ...spanOf(record),
    `SUMMARY:${escapeText(`${record.program}: ${heldCount} of ${record.reps.length} held`)}`,
    `DESCRIPTION:${escapeText(`${holdSeconds} s at full draw.${effort}${note}`)}`,
    ...lastModified(record.editedAt),
    'END:VEVENT',
  ];
}

function dayEvent(entry: DayEntry, stamp: string, includesNotes: boolean): string[] {
  const arrows = (entry.arrows ?? []).filter((one) => one.count > 0).map((one) => `${one.count} arrows, ${one.kind}`);
  const work = (entry.work ?? []).filter((one) => one.minutes > 0).map((one) => `${one.kind}, ${one.minutes} min`);
  const done = [...arrows, ...work];
  if (done.length === 0) return [];
  return [
    'BEGIN:VEVENT',
    `UID:${entry.date}@day.larkhold.invalid`,
    stamp,
    `DTSTART;VALUE=DATE:${entry.date.replaceAll('-', '')}`,
    `SUMMARY:${escapeText(done.join('; '))}`,
    ...(includesNotes && entry.note ? [`DESCRIPTION:${escapeText(entry.note)}`] : []),
    'TRANSP:TRANSPARENT',
    ...lastModified(entry.editedAt),
    'END:VEVENT',
  ];
}

function spanOf(record: DrillRecord): string[] {
  const start = readUtc(record.startedAt);
  if (start === undefined) return [`DTSTART;VALUE=DATE:${record.date.replaceAll('-', '')}`, 'TRANSP:TRANSPARENT'];
  const end = readUtc(record.endedAt);
  // An end must be after the start (RFC 5545, 3.8.2.2); a clock set back in mid-drill can put it before.
  const isAfter = end !== undefined && compareInstants(record.endedAt, record.startedAt) > 0 && end !== start;
  return isAfter ? [`DTSTART:${start}`, `DTEND:${end}`] : [`DTSTART:${start}`];
}

function lastModified(editedAt: string | undefined): string[] {
  const utc = editedAt === undefined ? undefined : readUtc(editedAt);
  return utc === undefined ? [] : [`LAST-MODIFIED:${utc}`];
}

const instantWithOffset = /^(\d{4}-\d\d-\d\dT[\d:.]+)(?:Z|([+-])(\d\d):?(\d\d))$/;

/** @returns the instant as RFC 5545 writes UTC, 'form 2'; undefined if it can't be read. */
function readUtc(instant: string): string | undefined {
  try {
    return formatUtc(instant);
  } catch {
    return undefined;
  }
}

function formatUtc(instant: string): string {
  const match = instantWithOffset.exec(instant);
  if (match === null) throw new RangeError(`instant: expected ISO 8601 with an offset, got '${instant}'`);
  const [, local, sign, hours = '0', minutes = '0'] = match;
  const offsetMs = (Number(hours) * 60 + Number(minutes)) * (sign === '-' ? -60_000 : 60_000);
  const utc = addToInstant(`${local}Z`, -offsetMs);
  return `${utc.slice(0, 19).replaceAll(/[-:]/g, '')}Z`;
}

/** @source RFC 5545, 3.3.11: backslash, semicolon, comma and line break are escaped; other control characters are not allowed. */
function escapeText(text: string): string {
  return text
    .replaceAll(/\r\n?/g, '\n')
    .replaceAll(/[\p{Surrogate}]/gu, '\uFFFD')
    .replaceAll(/[\\;,]/g, (character) => `\\${character}`)
    .replaceAll('\n', '\\n')
    .replaceAll(/\p{Cc}/gu, '');
}

/** Breaks a line so that no part is over 75 octets of UTF-8, never inside a character. */
function foldLine(line: string): string {
  let folded = '';
  let octets = 0;
  for (const character of line) {
    const point = character.codePointAt(0) ?? 0;
    const size = point < 0x80 ? 1 : point < 0x800 ? 2 : point < 0x10000 ? 3 : 4;
    if (octets + size > 75) {
      folded += '\r\n ';
      octets = 1;
    }
    folded += character;
    octets += size;
  }
  return folded;
}
