import type { DayEntry } from '@larkhold/engine';
import type { Kit } from '@larkhold/store';
import { say } from '@larkhold/words';

/** Work without a bow: lines to tick off. It has no holds, and is never logged as any. */
export type Routine = NonNullable<Kit['routines']>[number];

/** A routine as it is typed, or why it can't be kept. */
export type ReadRoutine = { ok: true; routine: Routine } | { ok: false; message: string };

const longestTitle = 120;
const mostLines = 30;
const longestLine = 200;
const mostMinutes = 240;
/** What the journal takes on one day. */
const mostWork = 50;

/**
 * Reads a routine as it is typed.
 * @param typed its id and kind; title, lines (one on each line) and minutes as text
 * @returns the routine, or what is wrong with it
 */
export function readRoutine(typed: {
  id: string;
  kind: Routine['kind'];
  title: string;
  lines: string;
  minutes: string;
}): ReadRoutine {
  const title = typed.title.trim();
  const lines = typed.lines
    .split(/\r\n?|\n/)
    .map((line) => line.trim())
    .filter((line) => line !== '');
  const minutes = Number(typed.minutes.trim() || Number.NaN);
  if (title === '' || title.length > longestTitle) return wrong('routine.needsTitle', longestTitle);
  if (lines.length === 0 || lines.length > mostLines) return wrong('routine.needsLines', mostLines);
  if (lines.some((line) => line.length > longestLine)) return wrong('routine.needsShorter', longestLine);
  if (!Number.isInteger(minutes) || minutes < 1 || minutes > mostMinutes)
    return wrong('routine.needsMinutes', mostMinutes);
  return { ok: true, routine: { id: typed.id, title, kind: typed.kind, minutes, lines } };
}

type Needs = 'routine.needsTitle' | 'routine.needsLines' | 'routine.needsShorter' | 'routine.needsMinutes';

function wrong(needs: Needs, most: number): ReadRoutine {
  return { ok: false, message: say(needs, { most }) };
}

/**
 * Adds a routine that was done to a day's diary, as minutes of work.
 * @param day the day's entry; left as it is
 * @param done the kind of work, minutes, and effort 0 to 10 where it was said
 * @returns the day with the work added; as it was when the day is full
 */
export function withWork(
  day: DayEntry,
  done: { kind: Routine['kind']; minutes: number; effort?: number | undefined },
): DayEntry {
  const { kind, minutes, effort } = done;
  const work = day.work ?? [];
  if (work.length >= mostWork) return day;
  return { ...day, work: [...work, { kind, minutes, ...(effort === undefined ? {} : { effort }) }] };
}
