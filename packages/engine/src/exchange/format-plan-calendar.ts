import type { PlanRow } from '../prescription/plan-row.ts';
import { escapeText, formatCalendarDay, formatCalendarLines, formatUtc } from './calendar-lines.ts';
import type { EventWords } from './format-calendar.ts';

/** How a calendar says what is planned: a row of `planWeeks` and its program's title; `planCalendarWords` of `@larkhold/words` gives it in every language. */
export type PlanCalendarWords = (row: PlanRow, program: string) => EventWords;

/** What a plan's calendar needs. */
export interface PlanCalendarOptions {
  /** The program's title. */
  program: string;
  /** The program file's id, where it has one. */
  programId?: string;
  /** The instant it is written, ISO 8601 with offset. */
  madeAt: string;
  /** The language. */
  words: PlanCalendarWords;
  /** Whose plan it is: with it, the plans of two archers in one calendar stay apart. */
  archerId?: string;
}

/**
 * Writes the coming weeks as an iCalendar file: each planned day an all-day event that leaves the day free. The same day of the same program
 * has the same UID in every file, so that a calendar takes a later plan as an update.
 * @param days in any order
 * @param options the program, and when it is written
 * @returns the text: lines end in CRLF and are folded at 75 octets
 * @throws RangeError if `madeAt` is not an instant
 * @source RFC 5545, sections 3.1, 3.3.4, 3.6.1, 3.8
 */
export function formatPlanCalendar(days: readonly PlanRow[], options: PlanCalendarOptions): string {
  const stamp = `DTSTAMP:${formatUtc(options.madeAt)}`;
  const owner = options.archerId === undefined ? '' : `.${escapeText(options.archerId)}`;
  const { program, words } = options;
  const name = escapeText(options.programId ?? program);
  return formatCalendarLines([
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Larkhold//Plan//EN',
    'CALSCALE:GREGORIAN',
    ...days.flatMap((day) => planEvent(day, { name, owner, program, words }, stamp)),
    'END:VCALENDAR',
  ]);
}

function planEvent(
  day: PlanRow,
  { name, owner, program, words }: Pick<PlanCalendarOptions, 'program' | 'words'> & { name: string; owner: string },
  stamp: string,
): string[] {
  const isCompetition = day.kind === 'competition';
  const [title, key] = day.program === undefined ? [program, name] : [day.program, escapeText(day.program)];
  const { summary, description } = words(day, title);
  return [
    'BEGIN:VEVENT',
    // One competition is one event, whichever program is planned around it.
    `UID:${day.date}.${isCompetition ? 'competition' : key}${owner}@plan.larkhold.invalid`,
    stamp,
    `DTSTART;VALUE=DATE:${formatCalendarDay(day.date)}`,
    `SUMMARY:${escapeText(summary)}`,
    `DESCRIPTION:${escapeText(description)}`,
    'TRANSP:TRANSPARENT',
    'END:VEVENT',
  ];
}
