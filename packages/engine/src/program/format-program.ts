import { canonicalOf } from './canonical.ts';
import { type Program, programSchema } from './program.ts';

/**
 * The canonical text of a program: the key order of the program file page, two-space indent, defaults left out, a final newline.
 * @param program a valid program
 * @returns JSON text that `parseProgram` reads back as an equal program
 */
export function formatProgram(program: Program): string {
  return `${JSON.stringify(canonicalOf(programSchema, program), null, 2)}\n`;
}
