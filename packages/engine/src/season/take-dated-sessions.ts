import type { DatedSessions, Season } from './season.ts';

/**
 * A season with what a coach wrote for certain days. Nothing is removed: where it speaks of a day that another answer speaks of, the later made one
 * counts, and `seasonNotices` says so.
 * @param season a valid season; it is left as it is
 * @param answer a coach's dated sessions
 * @returns a new season; the same one where it holds this answer already. Of more answers than a file may hold the one whose last day is furthest past goes
 */
export function takeDatedSessions(season: Season, answer: DatedSessions): Season {
  const text = JSON.stringify(answer);
  if (season.dated.some((one) => JSON.stringify(one) === text)) return season;
  const dated = [...season.dated, answer];
  if (dated.length > mostAnswers) dated.splice(oldestIn(dated), 1);
  return { ...season, dated };
}

/** As many as the file may hold. */
const mostAnswers = 12;

function oldestIn(dated: readonly DatedSessions[]): number {
  return dated.reduce((oldest, { to }, index) => (to < dated[oldest]!.to ? index : oldest), 0);
}
