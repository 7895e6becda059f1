import { formatSeason, type Problem, parseSeason, type Season } from '@larkhold/engine';

/**
 * Looks whether a changed season can be kept: what the form lets through is checked as a file is.
 * @param season as it would be kept
 * @returns the season as its file reads, or the first thing that is wrong
 */
export function checkedSeason(season: Season): { ok: true; season: Season } | { ok: false; problem: Problem } {
  const read = parseSeason(formatSeason(season));
  if (read.ok) return read;
  const [problem] = read.problems;
  if (!problem) throw new TypeError('a refused season has no problem');
  return { ok: false, problem };
}

/** The lists of a season whose things are added and removed one by one. */
export type SeasonList = 'competitions' | 'restDays' | 'tests' | 'dated' | 'blocks';

/**
 * A season without one thing of a list.
 * @param season it is left as it is
 * @param list which list
 * @param at the thing's place in it
 * @returns a new season
 */
export function withoutOne(season: Season, list: SeasonList, at: number): Season {
  return { ...season, [list]: (season[list] as readonly unknown[]).filter((_, index) => index !== at) };
}

/**
 * A season with one more thing in a list, in order of its first day.
 * @param season it is left as it is
 * @param list which list
 * @param thing to add
 * @returns a new season
 */
export function withOne<List extends 'competitions' | 'restDays' | 'tests'>(
  season: Season,
  list: List,
  thing: Season[List][number],
): Season {
  const dayOf = (one: Season[List][number]): string => ('day' in one ? one.day : one.from);
  const things: Season[List][number][] = [...season[list], thing];
  return { ...season, [list]: things.sort((a, b) => (dayOf(a) < dayOf(b) ? -1 : 1)) };
}
