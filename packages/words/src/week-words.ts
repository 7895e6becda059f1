import type { DaySummary, Totals, WeekSummary, WeekSums } from '@larkhold/engine';
import { feelWords } from './feel-words.ts';
import { formatCount, formatCounted, formatDay, formatDuration, formatMinutes } from './format-for-people.ts';

const oneDecimal = new Intl.NumberFormat('en', { minimumFractionDigits: 1, maximumFractionDigits: 1 });

/** Said of a day on which nothing is. */
export const NOTHING_WRITTEN = 'Nothing written';

/** One line of the totals: what, this week, last week. */
export interface TotalsLine {
  name: string;
  now: string;
  before: string;
}

/**
 * The number of a week.
 * @param week ISO week
 * @returns 'Week 48'
 */
export function weekTitle(week: string): string {
  return `Week ${Number(week.slice(6))}`;
}

/**
 * First and last day of some days in order.
 * @param dates ISO 8601
 * @returns 'Mon 23 Nov to Sun 29 Nov'
 */
export function spanWords(dates: readonly string[]): string {
  return `${formatDay(dates[0] ?? '', 'short')} to ${formatDay(dates.at(-1) ?? '', 'short')}`;
}

/**
 * First and last day of some days in order, with their year, or both where they are of two.
 * @param dates ISO 8601
 * @returns 'Mon 23 Nov to Sun 29 Nov 2026', 'Mon 28 Dec 2026 to Sun 3 Jan 2027'
 */
export function spanWordsWithYear(dates: readonly string[]): string {
  const [first, last] = [dates[0] ?? '', dates.at(-1) ?? ''];
  const [firstYear, lastYear] = [first.slice(0, 4), last.slice(0, 4)];
  const begins = firstYear === lastYear ? '' : ` ${firstYear}`;
  return `${formatDay(first, 'short')}${begins} to ${formatDay(last, 'short')} ${lastYear}`;
}

/**
 * What was done on a day.
 * @param day as summed up
 * @returns one line; 'Nothing written' where nothing is
 */
export function doneWords({ totals, entry }: DaySummary): string {
  const { drillsCount, repsCount, heldCount, holdMs, arrowsCount } = totals;
  const workMinutes = workMinutesOf(totals);
  const words = [
    ...(drillsCount > 0
      ? [
          `${formatCounted(drillsCount, 'drill')}, ${formatCount(heldCount)} of ${formatCounted(repsCount, 'rep')} held, ${formatDuration(holdMs)} at full draw`,
        ]
      : []),
    ...(arrowsCount > 0 ? [formatCounted(arrowsCount, 'arrow')] : []),
    ...(workMinutes > 0 ? [`${formatMinutes(workMinutes * 60_000)} other work`] : []),
    ...(entry?.feel === undefined ? [] : [`felt ${feelWords[entry.feel - 1]?.toLowerCase()}`]),
  ];
  if (words.length > 0) return words.join(' · ');
  return entry?.note || entry?.feelWords ? 'A note' : NOTHING_WRITTEN;
}

/**
 * Totals of this week beside those of last week.
 * @param summary of the week
 * @returns one line for each thing that is counted
 */
export function totalsLines({ now, before }: WeekSummary): TotalsLine[] {
  const line = (name: string, words: (sums: WeekSums) => string): TotalsLine => ({
    name,
    now: words(now),
    before: words(before),
  });
  return [
    line('Time at full draw', ({ totals }) => (totals.holdMs === 0 ? '–' : formatDuration(totals.holdMs))),
    line('Drills', ({ totals }) => formatCount(totals.drillsCount)),
    line('Reps held', ({ totals: { heldCount, repsCount } }) =>
      repsCount === 0 ? '–' : `${formatCount(heldCount)} of ${formatCount(repsCount)}`,
    ),
    line('Arrows', ({ totals }) => formatCount(totals.arrowsCount)),
    line('Other work', ({ workMinutes }) => (workMinutes === 0 ? '–' : formatMinutes(workMinutes * 60_000))),
    line('Feel, 1 to 5', ({ meanFeel }) => (meanFeel === undefined ? '–' : oneDecimal.format(meanFeel))),
  ];
}

/**
 * How planned days and done ones compare.
 * @param summary of the week
 * @returns one sentence; undefined when nothing is planned
 */
export function planWords({ days }: WeekSummary): string | undefined {
  const planned = days.filter(({ isPlanned }) => isPlanned);
  if (planned.length === 0) return undefined;
  const done = planned.filter(({ drills }) => drills.length > 0).length;
  return `${formatCount(done)} of ${formatCounted(planned.length, 'planned day')} drilled.`;
}

function workMinutesOf({ strengthMinutes, mobilityMinutes, fitnessMinutes }: Totals): number {
  return strengthMinutes + mobilityMinutes + fitnessMinutes;
}
