import { builtInPrograms } from './built-in-programs.ts';
import type { Program } from './program.ts';
import { idOf } from './program-id.ts';

/**
 * The programs an archer has: the built-in ones, and those that were opened. An opened one takes the place of the built-in one of its id.
 * @param opened what was opened, in order
 * @returns built-in ones first, then the opened
 * @example rackPrograms([]).length === builtInPrograms.length // true
 */
export function rackPrograms(opened: readonly Program[]): Program[] {
  const ids = new Set(opened.map(idOf));
  return [...builtInPrograms.filter((program) => !ids.has(idOf(program))), ...opened];
}
