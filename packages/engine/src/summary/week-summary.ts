import type { DrillRecord } from '../journal/drill-record.ts';
import type { DayEntry, Journal, WeekPage } from '../journal/journal.ts';
import { addTotals, createTotals, type Totals, totalsByDay } from '../load/totals.ts';
import { daysOfWeek, shiftDay, shiftWeek, type WeekStart, weekdayOf, weekListing } from '../units/iso-weeks.ts';

/** One day as the week's page shows it. */
export interface DaySummary {
  date: string;
  isPlanned: boolean;
  drills: readonly DrillRecord[];
  totals: Totals;
  entry?: DayEntry;
  hasPain: boolean;
}

/** Totals of an ISO week, and how it felt on the mean. */
export interface WeekSums {
  totals: Totals;
  workMinutes: number;
  /** 1 to 5; absent when no day says. */
  meanFeel?: number;
}

/** What a week's page shows. */
export interface WeekSummary {
  days: readonly DaySummary[];
  now: WeekSums;
  before: WeekSums;
  /** The one thing worked on: as written on this page, or as carried over. */
  focus: string;
  /** What the last page before this one carries forward. */
  carried?: string;
  /** True while `focus` is what was carried over. */
  isFocusCarried: boolean;
  /** Days on which a drill is planned, 1 for Monday; as on this page, or on the last one. */
  plannedDays: readonly number[];
}

/** What was done on one day of the strip. */
export type DayMark = 'drill' | 'other' | 'nothing';

/**
 * Sums up the week of a page.
 * @param journal visible things only
 * @param page the week's page; empty is fine
 * @param start the day the list of days begins with. Totals are of the ISO week all the same.
 * @returns what the page shows
 * @throws RangeError when there is no such week
 */
export function summarizeWeek(journal: Journal, page: WeekPage, start: WeekStart): WeekSummary {
  const dates = daysOfWeek(page.week, start);
  const isoDates = daysOfWeek(page.week, 'monday');
  const first = shiftDay(isoDates[0] ?? '', -7);
  const last = isoDates[6] ?? '';
  const near = between(journal, first, last);
  const totals = totalsByDay(near);
  const entries = new Map(near.days.map((entry) => [entry.date, entry]));
  const earlier = lastPageBefore(journal.weeks, page.week);
  const carried = earlier?.carriedForward?.trim() || undefined;
  const plannedOf = (week: string): readonly number[] =>
    (week === page.week ? page.plannedDays : journal.weeks.find((one) => one.week === week)?.plannedDays) ??
    lastPageBefore(journal.weeks, week, (one) => one.plannedDays !== undefined)?.plannedDays ??
    [];
  const days = dates.map((date): DaySummary => {
    const drills = near.drills.filter((record) => record.date === date);
    const entry = entries.get(date);
    return {
      date,
      drills,
      isPlanned: plannedOf(weekListing(date, 'monday')).includes(weekdayOf(date)),
      totals: totals.get(date) ?? createTotals(),
      ...(entry ? { entry } : {}),
      hasPain: entry?.pain === true || drills.some(({ pain }) => pain),
    };
  });
  return {
    days,
    now: sumsOf(isoDates, totals, entries),
    before: sumsOf(daysOfWeek(shiftWeek(page.week, -1), 'monday'), totals, entries),
    focus: page.focus ?? carried ?? '',
    ...(carried === undefined ? {} : { carried }),
    isFocusCarried: page.focus === undefined && carried !== undefined,
    plannedDays: plannedOf(page.week),
  };
}

/**
 * Marks the days before and on a day, for the strip.
 * @param journal visible things only
 * @param lastDay ISO 8601
 * @param dayCount how many days
 * @returns one mark a day, oldest first
 */
export function markDays(journal: Journal, lastDay: string, dayCount: number): { date: string; mark: DayMark }[] {
  const first = shiftDay(lastDay, 1 - dayCount);
  const totals = totalsByDay(between(journal, first, lastDay));
  return Array.from({ length: dayCount }, (_, index) => {
    const date = shiftDay(first, index);
    return { date, mark: markOf(totals.get(date)) };
  });
}

function markOf(totals: Totals | undefined): DayMark {
  if (!totals) return 'nothing';
  if (totals.drillsCount > 0) return 'drill';
  const { arrowsCount, strengthMinutes, mobilityMinutes, fitnessMinutes } = totals;
  return arrowsCount + strengthMinutes + mobilityMinutes + fitnessMinutes > 0 ? 'other' : 'nothing';
}

function between(journal: Journal, first: string, last: string): Journal {
  const isIn = ({ date }: { date: string }): boolean => first <= date && date <= last;
  return { drills: journal.drills.filter(isIn), days: journal.days.filter(isIn), weeks: [] };
}

function lastPageBefore(
  pages: readonly WeekPage[],
  week: string,
  isWanted: (page: WeekPage) => boolean = () => true,
): WeekPage | undefined {
  let found: WeekPage | undefined;
  for (const page of pages) {
    if (page.week < week && isWanted(page) && (!found || page.week > found.week)) found = page;
  }
  return found;
}

function sumsOf(
  dates: readonly string[],
  byDay: ReadonlyMap<string, Totals>,
  entries: ReadonlyMap<string, DayEntry>,
): WeekSums {
  const totals = createTotals();
  const feels: number[] = [];
  for (const date of dates) {
    addTotals(totals, byDay.get(date) ?? createTotals());
    const feel = entries.get(date)?.feel;
    if (feel !== undefined) feels.push(feel);
  }
  const workMinutes = totals.strengthMinutes + totals.mobilityMinutes + totals.fitnessMinutes;
  const sum = feels.reduce((total, feel) => total + feel, 0);
  return { totals, workMinutes, ...(feels.length > 0 ? { meanFeel: sum / feels.length } : {}) };
}
