import type { Problem } from '../program/problem.ts';
import { type FileMigration, readPlacedFile } from '../program/read-placed-file.ts';
import { seasonMigrations, seasonVersion } from './migrate-season.ts';
import { type Season, seasonSchema } from './season.ts';
import { checkSeason } from './season-rules.ts';

/** A season, or everything that is wrong with its file. */
export type ParsedSeason = { ok: true; season: Season } | { ok: false; problems: Problem[] };

/**
 * Reads a season file: is it ours, is it too new, migrate, validate.
 * @param text the file's text (JSON); a byte order mark at its start is passed over
 * @param migrations the steps from older versions; the shipped ones by default
 * @returns the season with its defaults filled in, or its problems with pointer, line and column: the first 200, and how many more there are
 * @example parseSeason('{}').ok === false
 */
export function parseSeason(
  text: string,
  migrations: Readonly<Record<number, FileMigration>> = seasonMigrations,
): ParsedSeason {
  const read = readPlacedFile(text, {
    ...{ name: 'larkhold/season', thing: 'season', version: seasonVersion, migrations },
    ...{ schema: seasonSchema, mostCommas: 9000 },
    check: (file) => {
      const season = seasonSchema.safeParse(file);
      return season.success ? checkSeason(season.data) : [];
    },
  });
  return read.ok ? { ok: true, season: read.value } : read;
}
