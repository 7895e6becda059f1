import type { HandOver } from '../exchange/hand-over.ts';
import type { DrillRecord } from '../journal/drill-record.ts';
import { lastBegun } from '../journal/last-drill.ts';
import { totalsByDay } from '../load/totals.ts';
import { dayNumber } from '../units/calendar-day.ts';
import { shiftDay, weekdayOf, weekListing } from '../units/iso-weeks.ts';

/** Days that the squad's table looks back on, from the last day of each file. */
export const LOOK_BACK_DAYS = 28;
/** After this many days an archer who has written nothing is listed as silent. */
export const SILENT_DAYS = 7;

/** One archer's line in the squad's table, over the last days of the file. */
export interface ArcherLine {
  handOver: HandOver;
  /** Days with a drill. */
  drilledDays: number;
  /** The last drill with a rep; absent when the file has no such drill. */
  lastDrill?: DrillRecord;
  plannedCount: number;
  /** Of the planned days: those with a drill. */
  doneCount: number;
  painDays: readonly string[];
  /** The last day on which anything was written or drilled; absent when there is none in the file. */
  lastDay?: string;
  /** Days from then to the day that the coach looks. */
  silentDays: number;
}

/**
 * Sums up one archer's file.
 * @param handOver as it was read
 * @param today the coach's day, ISO 8601
 * @returns the archer's line
 */
export function summarizeArcher(handOver: HandOver, today: string): ArcherLine {
  const first = shiftDay(handOver.to, 1 - LOOK_BACK_DAYS);
  const totals = totalsByDay(handOver);
  const painDays = new Set<string>();
  for (const { date, pain } of [...handOver.drills, ...handOver.days]) if (pain && date >= first) painDays.add(date);
  let [drilledDays, plannedCount, doneCount] = [0, 0, 0];
  for (let index = 0; index < LOOK_BACK_DAYS; index += 1) {
    const date = shiftDay(first, index);
    const isDrilled = (totals.get(date)?.drillsCount ?? 0) > 0;
    if (isDrilled) drilledDays += 1;
    if (date < handOver.from || !plannedDaysOf(handOver, date).includes(weekdayOf(date))) continue;
    plannedCount += 1;
    if (isDrilled) doneCount += 1;
  }
  const lastDay = [...totals.keys()].reduce<string | undefined>(
    (latest, date) => (latest === undefined || date > latest ? date : latest),
    undefined,
  );
  const lastDrill = lastBegun(handOver.drills.filter(({ reps }) => reps.length > 0));
  const since = lastDay ?? handOver.from;
  return {
    handOver,
    drilledDays,
    ...(lastDrill ? { lastDrill } : {}),
    plannedCount,
    doneCount,
    painDays: [...painDays].sort(),
    ...(lastDay === undefined ? {} : { lastDay }),
    silentDays: Math.max(daysFrom(since, today), 0),
  };
}

/**
 * Puts a file among those that are open: one for each archer, the one written last.
 * @param open the files that are open
 * @param handOver another one
 * @returns a new list, and whether the file is in it
 */
export function addHandOver(
  open: readonly HandOver[],
  handOver: HandOver,
): { open: readonly HandOver[]; isTaken: boolean } {
  const known = open.find(({ archerId }) => archerId === handOver.archerId);
  if (!known) return { open: [...open, handOver], isTaken: true };
  if (known.madeAt >= handOver.madeAt) return { open, isTaken: false };
  return { open: open.map((one) => (one === known ? handOver : one)), isTaken: true };
}

/**
 * Orders a squad: who reports pain, then who is silent, then by name.
 * @param lines any order
 * @returns a new list
 */
export function orderSquad(lines: readonly ArcherLine[]): ArcherLine[] {
  const rank = ({ painDays, silentDays }: ArcherLine): number =>
    painDays.length > 0 ? 0 : silentDays >= SILENT_DAYS ? 1 : 2;
  return [...lines].sort((a, b) => rank(a) - rank(b) || a.handOver.archer.localeCompare(b.handOver.archer));
}

/** A week with no plan of its own goes by the one before. Pages are in order of weeks. */
function plannedDaysOf({ weeks }: HandOver, date: string): readonly number[] {
  const week = weekListing(date, 'monday');
  return weeks.findLast((page) => page.week <= week && page.plannedDays !== undefined)?.plannedDays ?? [];
}

function daysFrom(first: string, last: string): number {
  return dayNumber(last) - dayNumber(first);
}
