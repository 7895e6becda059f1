import { escapeText, formatCalendarDay, formatCalendarLines, formatUtc } from './calendar-lines.ts';

/** What a plan's calendar shows of a day; a row of `planWeeks` is one. */
export interface PlannedDay {
  /** ISO 8601 day. */
  date: string;
  kind: 'usual' | 'deload' | 'taper' | 'competition' | 'test';
  /** The program's title, where a season plans more than one. */
  program?: string;
  /** The day's drill in words. */
  words: string;
  /** At full draw, milliseconds. */
  heldMs: number;
  /** The whole drill, milliseconds. */
  durationMs: number;
}

/** What a plan's calendar needs to be told. */
export interface PlanCalendarOptions {
  /** The program's title. */
  program: string;
  /** The program file's id, where it has one. */
  programId?: string;
  /** The instant it is written, ISO 8601 with offset. */
  madeAt: string;
  /** Whose plan it is: with it, the plans of two archers in one calendar stay apart. */
  archerId?: string;
}

const kindWords = {
  usual: '',
  deload: ' Lighter week.',
  taper: ' Lighter before the competition.',
  competition: '',
  test: ' A test.',
};

/**
 * Writes the coming weeks as an iCalendar file: each planned day an all-day event that leaves the day free. The same day of the same program
 * has the same UID in every file, so that a calendar takes a later plan as an update.
 * @param days in any order
 * @param options the program, and when it is written
 * @returns the text: lines end in CRLF and are folded at 75 octets
 * @throws RangeError if `madeAt` is not an instant
 * @source RFC 5545, sections 3.1, 3.3.4, 3.6.1, 3.8
 */
export function formatPlanCalendar(days: readonly PlannedDay[], options: PlanCalendarOptions): string {
  const stamp = `DTSTAMP:${formatUtc(options.madeAt)}`;
  const owner = options.archerId === undefined ? '' : `.${escapeText(options.archerId)}`;
  const name = escapeText(options.programId ?? options.program);
  return formatCalendarLines([
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Larkhold//Plan//EN',
    'CALSCALE:GREGORIAN',
    ...days.flatMap((day) => planEvent(day, { name, owner, program: options.program }, stamp)),
    'END:VCALENDAR',
  ]);
}

function planEvent(
  day: PlannedDay,
  { name, owner, program }: { name: string; owner: string; program: string },
  stamp: string,
): string[] {
  const isCompetition = day.kind === 'competition';
  const [title, key] = day.program === undefined ? [program, name] : [day.program, escapeText(day.program)];
  const minutes = (ms: number): number => Math.max(1, Math.round(ms / 60_000));
  const text = isCompetition
    ? 'No drill today nor the day before.'
    : `${day.words}. ${Math.round(day.heldMs / 1000)} s at full draw, ${minutes(day.durationMs)} min in all.${kindWords[day.kind]} A forecast: what is really held changes it.`;
  return [
    'BEGIN:VEVENT',
    // One competition is one event, whichever program is planned around it.
    `UID:${day.date}.${isCompetition ? 'competition' : key}${owner}@plan.larkhold.invalid`,
    stamp,
    `DTSTART;VALUE=DATE:${formatCalendarDay(day.date)}`,
    `SUMMARY:${escapeText(isCompetition ? day.words : `${title}: ${day.words}`)}`,
    `DESCRIPTION:${escapeText(text)}`,
    'TRANSP:TRANSPARENT',
    'END:VEVENT',
  ];
}
