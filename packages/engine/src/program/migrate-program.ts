import type { FileMigration } from './read-placed-file.ts';

/** The version of the program file that this reader writes. */
export const programVersion = 2;

/** Turns a program file of one version into one of the next. */
export type ProgramMigration = FileMigration;

/** One step per version: the function at n makes n + 1 of n. Version 2 added keys and changed none. */
export const programMigrations: Readonly<Record<number, ProgramMigration>> = { 1: (file) => file };
