import { canonicalOf } from '../program/canonical.ts';
import { type Season, seasonSchema } from './season.ts';

/**
 * The canonical text of a season: the key order of the season page, two-space indent, defaults left out, a final newline.
 * @param season a valid season
 * @returns JSON text that `parseSeason` reads back as an equal season
 */
export function formatSeason(season: Season): string {
  return `${JSON.stringify(canonicalOf(seasonSchema, season), null, 2)}\n`;
}
