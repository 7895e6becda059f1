import * as z from 'zod';
import type { Fault } from '../program/fault.ts';
import { faultSentences } from '../program/fault-sentences.ts';
import { readInstant } from '../units/instant.ts';

/**
 * An instant that a journal can hold: ISO 8601 with `Z` or an offset, of a real day from 1900 to 2999 and a real time of that day. Anything
 * else could win a merge and then never be edited again.
 */
export const journalInstantSchema = z.string().refine(isJournalInstant, {
  error: faultSentences['fault.instantYears'],
  params: { fault: { rule: 'instantYears' } satisfies Fault },
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
  error: faultSentences['fault.stamp'],
  params: { fault: { rule: 'stamp' } satisfies Fault },
});

function isStamp(text: string): boolean {
  if (text === '') return true; // of what was never stamped
  const [, instant = '', device] = /^([^~]{0,40})(?:~([a-z0-9]{1,16}))?$/.exec(text) ?? [];
  const read = readInstant(instant);
  return read !== undefined && read.offset !== '' && '1900' <= read.day && device !== '';
}
