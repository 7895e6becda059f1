import type { Journal } from '../journal/journal.ts';
import { builtInPrograms } from '../program/built-in-programs.ts';
import { dayNumber, dayOfNumber } from '../units/calendar-day.ts';
import { createDemoJournal, removeDemoJournal } from './demo-journal.ts';

/** Ids of invented drills begin so; the archer's own never do. */
export const DEMO_PREFIX = 'demo-';
/** How many days lie between the last invented drill and the diary's last day, at most. */
const DAYS_AFTER_LAST = 10;

/**
 * The invented diary that ends on a day.
 * @param endDay ISO 8601
 * @returns a journal
 */
export function demoDiary(endDay: string): Journal {
  return createDemoJournal({ endDay, programs: builtInPrograms });
}

/**
 * Takes the invented diary out, whenever it was put in.
 * @param journal any journal
 * @returns the journal without it
 */
export function withoutDemoDiary(journal: Journal): Journal {
  const last = journal.drills.reduce(
    (latest, { id, date }) => (id.startsWith(DEMO_PREFIX) && date > latest ? date : latest),
    '',
  );
  if (last === '') return journal;
  // The day it was made for is not stored: it is the one whose diary explains the most.
  const results = Array.from({ length: DAYS_AFTER_LAST }, (_, index) =>
    removeDemoJournal(journal, demoDiary(dayOfNumber(dayNumber(last) + index))),
  );
  const left = ({ days, weeks }: Journal): number => days.length + weeks.length;
  return results.reduce((best, result) => (left(result) < left(best) ? result : best));
}
