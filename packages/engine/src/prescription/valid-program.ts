import { type Program, programSchema } from '../program/program.ts';

/** More than a rack holds, and than a test draws: a program that is checked again loses what was folded for it. */
const MOST_KEPT = 500;
// Checking a program takes longer than prescribing it. Its text is the key, so that a program that was changed in place is checked again.
const kept = new Map<string, Program>();
// One that nobody can change is known by itself; the built-in ones are such.
const unchanging = new WeakMap<Program, Program>();

/**
 * Checks a program that a caller hands in, and fills in its defaults.
 * @param program what should be a program
 * @returns the program, defaults filled in; the same object for the same program
 * @throws TypeError naming the first key that is wrong
 */
export function validProgram(program: Program): Program {
  const unchanged = unchanging.get(program);
  if (unchanged) return unchanged;
  const valid = validByText(program);
  if (isFrozen(program)) unchanging.set(program, valid);
  return valid;
}

function validByText(program: Program): Program {
  const text = JSON.stringify(program) ?? '';
  const known = kept.get(text);
  if (known) return known;
  const result = programSchema.safeParse(program);
  if (!result.success) {
    const [issue] = result.error.issues;
    throw new TypeError(`program is not valid at /${issue?.path.map(String).join('/')}: ${issue?.message}`);
  }
  if (kept.size >= MOST_KEPT) kept.delete(kept.keys().next().value!);
  kept.set(text, result.data);
  return result.data;
}

/** Whether nothing in it can be changed, all the way down. */
function isFrozen(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return true;
  return Object.isFrozen(value) && Object.values(value).every(isFrozen);
}
