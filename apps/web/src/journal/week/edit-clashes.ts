import { type DayEntry, isoWeek, type Journal, type JournalComparison, type WeekPage } from '@larkhold/engine';
import { feltWords, formatCounted, formatDay, weekTitle } from '@larkhold/words';

/** A day or week that was written on both sides, of which one edit stands. */
export interface EditClash {
  /** 'Wednesday 25 November', 'Week 48 of 2026'. */
  name: string;
  /** Where it is in the app. */
  href: string;
  /** True while what is here stands, false while the file's does. */
  isOurs: boolean;
  /** What the other one says and this one does not, in words. */
  leftOut: readonly string[];
}

type Words<T> = { readonly [Key in keyof T]?: (value: NonNullable<T[Key]>) => string };

const quote = (name: string) => (text: string) => `${name}: “${text}”`;

const dayWords: Words<DayEntry> = {
  arrows: (lines) =>
    formatCounted(
      lines.reduce((sum, { count }) => sum + count, 0),
      'arrow',
    ),
  place: quote('place'),
  shootingEffort: (effort) => `shooting effort ${effort}`,
  shootingMinutes: (minutes) => `${minutes} min of shooting`,
  work: (lines) => lines.map(({ kind, minutes }) => `${minutes} min of ${kind}`).join(', '),
  feel: (step) => feltWords(step),
  feelWords: quote('feel'),
  readiness: (word) => `readiness: ${word}`,
  pain: (isSo) => (isSo ? 'pain' : 'no pain'),
  note: quote('note'),
};

const weekWords: Words<WeekPage> = {
  goal: quote('goal'),
  focus: quote('focus'),
  sketch: () => 'a sketch',
  plannedDays: (days) => formatCounted(days.length, 'planned day'),
  wentRight: quote('what went right'),
  needsWork: quote('what needs work'),
  carriedForward: quote('what goes into next week'),
  comment: quote('comment'),
};

/**
 * Finds the days and weeks of which a merge leaves something out, because both sides wrote on them and one edit stands whole.
 * @param ours the journal we have
 * @param incoming the one that would be merged
 * @param comparison of the two
 * @returns those where the edit that does not stand says something that the other does not; newest first, days before weeks
 */
export function findClashes(ours: Journal, incoming: Journal, comparison: JournalComparison): EditClash[] {
  const days = clashesOf(ours.days, incoming.days, comparison.days, ({ date }) => date, dayWords).map(
    ({ key, ...rest }) => ({ name: formatDay(key), href: `#/week/${isoWeek(key)}/${key}`, ...rest }),
  );
  const weeks = clashesOf(ours.weeks, incoming.weeks, comparison.weeks, ({ week }) => week, weekWords).map(
    ({ key, ...rest }) => ({ name: `${weekTitle(key)} of ${key.slice(0, 4)}`, href: `#/week/${key}`, ...rest }),
  );
  return [...days, ...weeks];
}

function clashesOf<T extends object>(
  ours: readonly T[],
  incoming: readonly T[],
  { changed, kept }: { changed: readonly string[]; kept: readonly string[] },
  keyOf: (thing: T) => string,
  words: Words<T>,
): { key: string; isOurs: boolean; leftOut: string[] }[] {
  const [mine, theirs] = [ours, incoming].map((list) => new Map(list.map((thing) => [keyOf(thing), thing])));
  return [...changed.map((key) => ({ key, isOurs: false })), ...kept.map((key) => ({ key, isOurs: true }))]
    .map(({ key, isOurs }) => {
      const [stands, other] = isOurs ? [mine?.get(key), theirs?.get(key)] : [theirs?.get(key), mine?.get(key)];
      return { key, isOurs, leftOut: stands && other ? leftOutOf(stands, other, words) : [] };
    })
    .filter(({ leftOut }) => leftOut.length > 0)
    .sort((a, b) => (a.key < b.key ? 1 : -1));
}

function leftOutOf<T extends object>(stands: T, other: T, words: Words<T>): string[] {
  // What was removed on purpose is not missed.
  if ('removed' in stands || 'removed' in other) return [];
  const found: string[] = [];
  for (const key in words) {
    const [value, say] = [other[key], words[key]];
    if (!say || value === undefined || value === null || value === '') continue;
    if (JSON.stringify(value) !== JSON.stringify(stands[key])) found.push(say(value));
  }
  return found;
}
