import { dayNumber } from '../units/calendar-day.ts';
import { keepPastBody, type PastBody } from './body-state.ts';
import type { LoggedDay } from './logged-day.ts';

/**
 * Everything in a journal before a day, folded: it replaces those records and diary entries, so that ten years need not be read before
 * today's numbers are there. Made by `foldPast`; only ever a copy of what the journal says.
 */
export interface Past {
  /** Of the rules that it was folded by, see `FOLD_VERSION`. */
  version: number;
  /** The first day that is not in it, ISO 8601. */
  before: string;
  /** The first day of which anything is known, days from 1970-01-01. */
  firstDay: number;
  /** Drills and diary entries in it, those of removed things left out. */
  drillCount: number;
  dayCount: number;
  body: PastBody;
  /** How far programs had come, each by the text of its file; what a state holds is the prescription's. */
  programs: readonly { key: string; state: object }[];
  /** The last drill in it that was no test: when it began, ISO 8601, and of which program. */
  lastDrill?: { startedAt: string; programId: string };
}

const days = new WeakMap<Past, LoggedDay>();
const pasts = new WeakMap<LoggedDay, Past>();

/**
 * The day that represents a folded past at the head of a log.
 * @param past as `foldPast` gives it
 * @returns the same day for the same past; undefined for none
 */
export function dayOfPast(past: Past | undefined): LoggedDay | undefined {
  if (!past) return undefined;
  const known = days.get(past);
  if (known) return known;
  const day: LoggedDay = { day: dayNumber(past.before) - 1, drills: [], isPast: true };
  days.set(past, day);
  pasts.set(day, past);
  keepPastBody(day, past.body);
  return day;
}

/**
 * What a day of the past represents.
 * @param day the first of a log
 * @returns the past; undefined for any other day
 */
export function pastOf(day: LoggedDay): Past | undefined {
  return day.isPast && pasts.get(day);
}
