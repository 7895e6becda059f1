import type { Program } from '../program/program.ts';
import type { ProgramRef } from './season.ts';

/**
 * The program that a season names.
 * @param ref as the season names it
 * @param programs that the archer has
 * @returns the one with the same id; where one of the two has no id, the one with the same title; undefined where there is none
 */
export function findProgram(ref: ProgramRef, programs: readonly Program[]): Program | undefined {
  const byId = ref.id === undefined ? undefined : programs.find(({ id }) => id === ref.id);
  return byId ?? programs.find(({ id, title }) => title === ref.title && (id === undefined || ref.id === undefined));
}
