import { type FileMigration, migrateFile } from './read-placed-file.ts';

/** The version of the program file that this reader writes. */
export const programVersion = 2;

/** Turns a program file of one version into one of the next. */
export type ProgramMigration = FileMigration;

/** One step per version: the function at n makes n + 1 of n. Version 2 added keys and changed none. */
export const programMigrations: Readonly<Record<number, ProgramMigration>> = { 1: (file) => file };

/**
 * Walks a file up to the version this reader knows.
 * @param file the file's object, with a whole `version`
 * @param migrations the steps; the shipped ones by default
 * @param target the version to reach
 * @returns the file at that version
 * @throws RangeError when a step is missing
 */
export function migrateProgram(
  file: Record<string, unknown>,
  migrations: Readonly<Record<number, ProgramMigration>> = programMigrations,
  target: number = programVersion,
): Record<string, unknown> {
  return migrateFile(file, migrations, target);
}
