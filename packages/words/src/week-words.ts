import type { DaySummary, Totals, WeekSummary, WeekSums } from '@larkhold/engine';
import type { Words } from './create-words.ts';
import { feltWords } from './feel-words.ts';
import type { DayStyle } from './formats.ts';
import { presentWords } from './present-words.ts';

/** One line of the totals: what, this week, last week. */
export interface TotalsLine {
  name: string;
  now: string;
  before: string;
}

/**
 * The number of a week.
 * @param week ISO week
 * @param words the language
 * @returns 'Week 48'
 */
export function weekTitle(week: string, words: Words = presentWords()): string {
  return words.say('week.title', { week: Number(week.slice(6)) });
}

/**
 * First and last day of some days in order, as the language writes the two together.
 * @param dates ISO 8601
 * @param style of each; what both have in common, a month or a year, is written once where the language does so
 * @param words the language
 * @returns 'Mon 23 Nov – Sun 29 Nov', in the style `year` '23–29 November 2026', '28 December 2026 – 3 January 2027'; empty without days
 */
export function spanWords(dates: readonly string[], style: DayStyle = 'short', words: Words = presentWords()): string {
  const [first, last] = [dates[0], dates.at(-1)];
  return first === undefined || last === undefined ? '' : words.days(first, last, style);
}

/**
 * What was done on a day.
 * @param day as summed up
 * @param words the language
 * @returns one line; undefined where nothing is
 */
export function doneWords({ totals, entry }: DaySummary, words: Words = presentWords()): string | undefined {
  const parts = totalsParts(totals, words);
  if (entry?.feel !== undefined) parts.push(feltWords(entry.feel, words));
  if (parts.length > 0) return parts.join(' · ');
  return entry?.note || entry?.feelWords ? words.say('week.note') : undefined;
}

/**
 * What was done in a week.
 * @param summary of the week
 * @param words the language
 * @returns one line; undefined where nothing is
 */
export function weekDoneWords({ now }: Pick<WeekSummary, 'now'>, words: Words = presentWords()): string | undefined {
  const parts = totalsParts(now.totals, words);
  return parts.length > 0 ? parts.join(' · ') : undefined;
}

function totalsParts(totals: Totals, words: Words): string[] {
  const { drillsCount, repsCount, heldCount, holdMs, arrowsCount } = totals;
  const workMinutes = workMinutesOf(totals);
  return [
    drillsCount > 0 && words.say('week.drills', { drills: drillsCount, held: heldCount, reps: repsCount, ms: holdMs }),
    arrowsCount > 0 && words.say('week.arrows', { n: arrowsCount }),
    workMinutes > 0 && words.say('week.otherWork', { ms: workMinutes * 60_000 }),
  ].filter((part) => part !== false);
}

/**
 * Totals of this week beside those of last week.
 * @param summary of the week
 * @param words the language
 * @returns one line for each thing that is counted
 */
export function totalsLines({ now, before }: WeekSummary, words: Words = presentWords()): TotalsLine[] {
  const line = (name: string, of: (sums: WeekSums) => string): TotalsLine => ({
    name,
    now: of(now),
    before: of(before),
  });
  const isSeen = (now.totals.seenMs ?? before.totals.seenMs) !== undefined;
  return [
    line(words.say('week.totalHold'), ({ totals }) => (totals.holdMs === 0 ? '–' : words.duration(totals.holdMs))),
    ...(isSeen
      ? [
          line(words.say('week.totalSeen'), ({ totals: { seenMs = 0 } }) =>
            seenMs === 0 ? '–' : words.duration(seenMs),
          ),
        ]
      : []),
    line(words.say('week.totalDrills'), ({ totals }) => words.count(totals.drillsCount)),
    line(words.say('week.totalReps'), ({ totals: { heldCount, repsCount } }) =>
      repsCount === 0 ? '–' : words.say('week.ofReps', { held: heldCount, reps: repsCount }),
    ),
    line(words.say('week.totalArrows'), ({ totals }) => words.count(totals.arrowsCount)),
    line(words.say('week.totalWork'), ({ workMinutes }) =>
      workMinutes === 0 ? '–' : words.minutes(workMinutes * 60_000),
    ),
    line(words.say('week.totalFeel'), ({ meanFeel }) => (meanFeel === undefined ? '–' : words.tenths(meanFeel))),
  ];
}

/**
 * How planned days and done ones compare.
 * @param summary of the week
 * @param words the language
 * @returns one sentence; undefined when nothing is planned
 */
export function planWords({ days }: WeekSummary, words: Words = presentWords()): string | undefined {
  const planned = days.filter(({ isPlanned }) => isPlanned);
  if (planned.length === 0) return undefined;
  const done = planned.filter(({ drills }) => drills.length > 0).length;
  return words.say('week.planned', { done, planned: planned.length });
}

function workMinutesOf({ strengthMinutes, mobilityMinutes, fitnessMinutes }: Totals): number {
  return strengthMinutes + mobilityMinutes + fitnessMinutes;
}
