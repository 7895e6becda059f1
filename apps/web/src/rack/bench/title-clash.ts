import type { Program } from '@larkhold/engine';

/** Longest title of a program file. */
const longestTitle = 120;

/**
 * The other program that has the same title, if there is one.
 * @param program the one that is to be kept
 * @param programs those on the rack
 * @returns the other one; never the program itself, known by its id
 */
export function sameTitle(program: Pick<Program, 'id' | 'title'>, programs: readonly Program[]): Program | undefined {
  const title = keyOf(program.title);
  return programs.find(
    (other) => keyOf(other.title) === title && (program.id === undefined || other.id !== program.id),
  );
}

/**
 * A title that no program on the rack has.
 * @param title the wished one
 * @param programs those on the rack
 * @returns the wished one, or it with the first free number
 */
export function freeTitle(title: string, programs: readonly Program[]): string {
  const taken = new Set(programs.map((program) => keyOf(program.title)));
  if (!taken.has(keyOf(title))) return title;
  for (let number = 2; ; number++) {
    const ending = ` (${number})`;
    const next = [...title].slice(0, longestTitle - ending.length).join('') + ending;
    if (!taken.has(keyOf(next))) return next;
  }
}

function keyOf(title: string): string {
  return title.trim().toLowerCase();
}
