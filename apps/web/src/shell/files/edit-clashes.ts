import {
  type DayEntry,
  isoWeek,
  type Journal,
  type JournalComparison,
  mergeJournals,
  type WeekPage,
} from '@larkhold/engine';
import { feltWords, formatDay, formatRow, readinessWord, say, weekTitle } from '@larkhold/words';

/** A day or week of which both sides wrote the same fields, so that one side's are kept. */
export interface EditClash {
  /** 'Wednesday 25 November', 'Week 48 of 2026'. */
  name: string;
  /** Where it is in the app. */
  href: string;
  /** True where what is here is kept, false where the file's is. */
  isOurs: boolean;
  /** What the other one says and this one does not, in words. */
  leftOut: readonly string[];
}

type Words<T> = { readonly [Key in keyof T]?: (value: NonNullable<T[Key]>) => string };

type Quoted = 'place' | 'feel' | 'note' | 'goal' | 'focus' | 'wentRight' | 'needsWork' | 'carriedForward' | 'comment';
const quote = (name: Quoted) => (text: string) => say(`clash.${name}`, { text });

const dayWords: Words<DayEntry> = {
  arrows: (lines) => say('week.arrows', { n: lines.reduce((sum, { count }) => sum + count, 0) }),
  place: quote('place'),
  shootingEffort: (effort) => say('clash.shootingEffort', { effort }),
  shootingMinutes: (minutes) => say('clash.shootingMinutes', { minutes }),
  work: (lines) => formatRow(lines.map(({ kind, minutes }) => say('clash.work', { minutes, kind }))),
  feel: (step) => feltWords(step),
  feelWords: quote('feel'),
  readiness: (word) => say('clash.readiness', { word: readinessWord(word) }),
  pain: (isSo) => (isSo ? say('clash.pain') : say('clash.noPain')),
  note: quote('note'),
};

const weekWords: Words<WeekPage> = {
  goal: quote('goal'),
  focus: quote('focus'),
  sketch: () => say('clash.sketch'),
  plannedDays: (days) => say('clash.plannedDays', { n: days.length }),
  wentRight: quote('wentRight'),
  needsWork: quote('needsWork'),
  carriedForward: quote('carriedForward'),
  comment: quote('comment'),
};

/**
 * Finds the days and weeks of which a merge leaves something out, because both sides wrote on the same thing there.
 * @param ours the journal we have
 * @param incoming the one that would be merged
 * @param comparison of the two
 * @returns those of which one side says something that the merge does not; newest first, days before weeks
 */
export function findClashes(ours: Journal, incoming: Journal, comparison: JournalComparison): EditClash[] {
  // Drills, of which a long journal has the most by far, say nothing of days and weeks.
  const merged = mergeJournals({ ...ours, drills: [] }, { ...incoming, drills: [] });
  const days = clashesOf(
    'days',
    (journal) => journal.days,
    ({ date }) => date,
    dayWords,
    { ours, incoming, merged, comparison },
  ).map(({ key, ...rest }) => ({ name: formatDay(key), href: `#/week/${isoWeek(key)}/${key}`, ...rest }));
  const weeks = clashesOf(
    'weeks',
    (journal) => journal.weeks,
    ({ week }) => week,
    weekWords,
    { ours, incoming, merged, comparison },
  ).map(({ key, ...rest }) => ({
    name: say('clash.weekOf', { week: weekTitle(key), year: key.slice(0, 4) }),
    href: `#/week/${key}`,
    ...rest,
  }));
  return [...days, ...weeks];
}

interface Sides {
  ours: Journal;
  incoming: Journal;
  merged: Journal;
  comparison: JournalComparison;
}

function clashesOf<T extends object>(
  name: 'days' | 'weeks',
  rowsOf: (journal: Journal) => readonly T[],
  keyOf: (thing: T) => string,
  words: Words<T>,
  { ours, incoming, merged, comparison }: Sides,
): { key: string; isOurs: boolean; leftOut: string[] }[] {
  const [mine, theirs, both] = [ours, incoming, merged].map(
    (journal) => new Map(rowsOf(journal).map((thing) => [keyOf(thing), thing])),
  );
  // What was removed on purpose is not missed.
  const removed = new Set(merged.removed?.flatMap(({ of, key }) => (of === name ? [key] : [])));
  return [...comparison[name].changed, ...comparison[name].kept]
    .filter((key) => !removed.has(key))
    .flatMap((key) => [
      { key, isOurs: false, leftOut: leftOutOf(both?.get(key), mine?.get(key), words) },
      { key, isOurs: true, leftOut: leftOutOf(both?.get(key), theirs?.get(key), words) },
    ])
    .filter(({ leftOut }) => leftOut.length > 0)
    .sort((a, b) => (a.key < b.key ? 1 : a.key > b.key ? -1 : 0));
}

function leftOutOf<T extends object>(kept: T | undefined, other: T | undefined, words: Words<T>): string[] {
  if (!kept || !other) return [];
  const found: string[] = [];
  for (const key in words) {
    const [value, inWords] = [other[key], words[key]];
    if (!inWords || value === undefined || value === null || value === '') continue;
    if (JSON.stringify(value) !== JSON.stringify(kept[key])) found.push(inWords(value));
  }
  return found;
}
