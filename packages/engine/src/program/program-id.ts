import type { Program } from './program.ts';

/**
 * A program's id as records, links and choices use it.
 * @param program one of the rack's
 * @returns its id, or its title where the file had none
 */
export function idOf({ id, title }: Pick<Program, 'id' | 'title'>): string {
  return id ?? title;
}
