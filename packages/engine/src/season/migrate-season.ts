import type { FileMigration } from '../program/read-placed-file.ts';

/** The version of the season file that this reader writes. */
export const seasonVersion = 1;

/** One step per version: the function at n makes n + 1 of n. Empty while version 1 is the only one ever shipped. */
export const seasonMigrations: Readonly<Record<number, FileMigration>> = {};
