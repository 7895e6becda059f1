import { parseProgram } from './parse-program.ts';
import type { Problem } from './problem.ts';
import type { Program } from './program.ts';
import { idOf } from './program-id.ts';

/** What a file turned out to be. */
export type ReadProgramFile =
  | { kind: 'new'; name: string; program: Program }
  /** The rack has one of the same id or title. */
  | { kind: 'same'; name: string; program: Program; there: Program }
  | { kind: 'broken'; name: string; problems: readonly Problem[] };

/**
 * Reads a program file and looks for one like it in the rack. Changes nothing.
 * @param name the file's name
 * @param text what is in it
 * @param rack the programs that are there
 * @param newId gives an id to a file that has none
 * @returns what it turned out to be
 */
export function readProgramFile(
  name: string,
  text: string,
  rack: readonly Program[],
  newId: () => string,
): ReadProgramFile {
  const parsed = parseProgram(text);
  if (!parsed.ok) return { kind: 'broken', name, problems: parsed.problems };
  const read = parsed.program;
  const there =
    rack.find(({ id }) => id !== undefined && id === read.id) ?? rack.find(({ title }) => title === read.title);
  const program: Program = read.id === undefined ? { ...read, id: newId() } : read;
  return there ? { kind: 'same', name, program, there } : { kind: 'new', name, program };
}

/**
 * A copy that can be kept beside the one that is there: its own id and title.
 * @param program what the file says
 * @param rack the programs that are there
 * @param newId gives the id
 * @returns the copy
 */
export function asAnother(program: Program, rack: readonly Program[], newId: () => string): Program {
  const titles = new Set(rack.map(({ title }) => title));
  let title = program.title;
  for (let count = 2; titles.has(title); count += 1) title = `${program.title.slice(0, 110)} (${count})`;
  return { ...program, id: newId(), title };
}

/**
 * What the file says, under the identity of the one that is there, so that its records still count.
 * @param program what the file says
 * @param there what it takes the place of
 * @returns the program to store
 */
export function inPlaceOf(program: Program, there: Program): Program {
  return { ...program, id: there.id ?? idOf(program) };
}
