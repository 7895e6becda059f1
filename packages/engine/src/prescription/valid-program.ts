import { type Program, programSchema } from '../program/program.ts';

/**
 * Checks a program that a caller hands in, and fills in its defaults.
 * @param program what should be a program
 * @returns the program, defaults filled in
 * @throws TypeError naming the first key that is wrong
 */
export function validProgram(program: Program): Program {
  const result = programSchema.safeParse(program);
  if (result.success) return result.data;
  const [issue] = result.error.issues;
  throw new TypeError(`program is not valid at /${issue?.path.map(String).join('/')}: ${issue?.message}`);
}
