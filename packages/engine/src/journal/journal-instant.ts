import * as z from 'zod';
import { readInstant } from '../units/instant.ts';

/**
 * An instant that a journal can hold: ISO 8601 with `Z` or an offset, of a real day from 1900 to 2999 and a real time of that day. Anything
 * else could win a merge and then never be edited again.
 */
export const journalInstantSchema = z.string().refine(isJournalInstant, {
  error: 'Expected a date and time of the years 1900 to 2999 with an offset, such as 2026-11-25T06:30:00Z.',
});

function isJournalInstant(text: string): boolean {
  const read = text.length <= 40 ? readInstant(text) : undefined;
  return read !== undefined && read.offset !== '' && '1900' <= read.day && read.day < '3000';
}

/**
 * The stamp of an edit, as `stampAfter` makes it: an instant, perhaps with `~` and a device's name. It may lie beyond the years of a journal:
 * an edit is always stamped after what it edits.
 */
export const journalStampSchema = z.string().refine(isStamp, {
  error: 'Expected the date and time of an edit with an offset, such as 2026-11-25T06:30:00Z.',
});

function isStamp(text: string): boolean {
  if (text === '') return true; // of what was never stamped
  const [, instant = '', device] = /^([^~]{0,40})(?:~([a-z0-9]{1,16}))?$/.exec(text) ?? [];
  const read = readInstant(instant);
  return read !== undefined && read.offset !== '' && '1900' <= read.day && device !== '';
}
