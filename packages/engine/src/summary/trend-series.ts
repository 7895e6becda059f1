import { heldOf } from '../journal/held-of.ts';
import type { Journal } from '../journal/journal.ts';
import { wholeHeldMs } from '../journal/true-held-ms.ts';
import { dailyLoads } from '../load/daily-loads.ts';
import { addTotals, createTotals, type Totals, totalsByDay } from '../load/totals.ts';
import { weekLoad } from '../load/week-load.ts';
import { workloadRatio } from '../load/workload-ratio.ts';
import { dayNumber, dayOfNumber, mondayNumber } from '../units/calendar-day.ts';

/** What the trends show, in order. */
export const trendKinds = [
  'hold',
  'longest',
  'whole',
  'arrows',
  'load',
  'monotony',
  'strain',
  'ratio',
  'feel',
] as const;
/** Trends that are worked out from the load: for those who know what they mean, a coach above all. */
export const derivedTrends: ReadonlySet<TrendKind> = new Set<TrendKind>(['monotony', 'strain', 'ratio']);
/** One of the trends. */
export type TrendKind = (typeof trendKinds)[number];

/** One day, or one week told by its last day. */
export interface TrendPoint {
  /** The day that the point opens, ISO 8601. */
  day: string;
  values: Readonly<Partial<Record<TrendKind, number>>>;
}

/** Trends over a span. */
export interface Trends {
  /** Oldest first. */
  points: readonly TrendPoint[];
  step: 'day' | 'week';
  /** Things in the whole journal with no effort or no length: they count as no load. */
  unratedCount: number;
}

/** Longest span that loads are worked out for, days. */
const MOST_DAYS = 4000;
/** Up to this many weeks every day has its point; beyond, every week. */
const DAILY_WEEKS = 12;

/**
 * Works out all trends up to a day. Hold time, longest hold and the middle of how long holds stayed whole are milliseconds; loads are effort times minutes; monotony, strain and the
 * acute:chronic ratio are of the 7 and 28 days up to the point, and absent while there are fewer.
 * @param journal visible things only
 * @param today ISO 8601, the last day
 * @param weekCount how many weeks back; undefined for everything there is
 * @returns the points; none when nothing was ever written
 */
export function createTrends(journal: Journal, today: string, weekCount?: number): Trends {
  const last = dayNumber(today);
  const totals = totalsByDay(journal);
  const firstDay = [...totals.keys()].reduce((first, day) => (day < first ? day : first), today);
  if (totals.size === 0) return { points: [], step: 'day', unratedCount: 0 };
  const first = Math.max(dayNumber(firstDay), last - MOST_DAYS + 1);
  const { loads, unratedCount } = dailyLoads(journal, today, last - first + 1);
  const longest = longestByDay(journal);
  const whole = wholeByDay(journal);
  const feel = new Map(
    journal.days.flatMap(({ date, feel: step }) => (step === undefined ? [] : [[date, step] as const])),
  );
  const step = weekCount !== undefined && weekCount <= DAILY_WEEKS ? 'day' : 'week';
  const shown = weekCount === undefined ? first : Math.max(first, last - weekCount * 7 + 1);

  const points: TrendPoint[] = [];
  for (let number = step === 'day' ? shown : mondayNumber(shown); number <= last; ) {
    const end = step === 'day' ? number : Math.min(number + 6, last);
    points.push(pointOf(number, end));
    number = end + 1;
  }
  return { points, step, unratedCount };

  function pointOf(from: number, to: number): TrendPoint {
    const sum = createTotals();
    const feels: number[] = [];
    const wholes: number[] = [];
    let [longestMs, load, day] = [0, 0, dayOfNumber(to)];
    for (let number = from; number <= to; number += 1) {
      const date = dayOfNumber(number);
      const ofDay: Totals | undefined = totals.get(date);
      if (ofDay) {
        addTotals(sum, ofDay);
        day = date;
      }
      longestMs = Math.max(longestMs, longest.get(date) ?? 0);
      wholes.push(...(whole.get(date) ?? []));
      load += loads[number - first] ?? 0;
      const step = feel.get(date);
      if (step !== undefined) feels.push(step);
    }
    const known = to - first + 1;
    const week = known >= 7 ? weekLoad(loads.slice(known - 7, known)) : undefined;
    return {
      day,
      values: withoutGaps({
        hold: sum.holdMs,
        longest: longestMs > 0 ? longestMs : undefined,
        whole: middleOf(wholes),
        arrows: sum.arrowsCount,
        load,
        monotony: week?.monotony,
        strain: week?.strain,
        ratio: known >= 28 ? workloadRatio(loads.slice(known - 28, known)) : undefined,
        feel: feels.length > 0 ? feels.reduce((total, step) => total + step, 0) / feels.length : undefined,
      }),
    };
  }
}

function longestByDay({ drills }: Journal): Map<string, number> {
  const longest = new Map<string, number>();
  for (const { date, reps } of drills) {
    const { longestMs } = heldOf(reps);
    if (longestMs > (longest.get(date) ?? 0)) longest.set(date, longestMs);
  }
  return longest;
}

/** How long each hold of a day stayed whole, where a camera could judge it. */
function wholeByDay({ drills }: Journal): Map<string, number[]> {
  const whole = new Map<string, number[]>();
  for (const { date, reps } of drills) {
    const ofDrill = reps.flatMap((rep) => wholeHeldMs(rep) ?? []);
    if (ofDrill.length > 0) whole.set(date, [...(whole.get(date) ?? []), ...ofDrill]);
  }
  return whole;
}

function middleOf(values: readonly number[]): number | undefined {
  if (values.length === 0) return undefined;
  const sorted = [...values].sort((a, b) => a - b);
  return ((sorted[(sorted.length - 1) >> 1] ?? 0) + (sorted[sorted.length >> 1] ?? 0)) / 2;
}

function withoutGaps(values: Record<TrendKind, number | undefined>): TrendPoint['values'] {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined));
}
