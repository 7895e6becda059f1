import { bandPrograms } from './built-in/band.ts';
import { firstHolds } from './built-in/first-holds.ts';
import { strongBow } from './built-in/strong-bow.ts';
import { builtInTests } from './built-in/tests.ts';
import { type Program, programSchema } from './program.ts';

/**
 * The programs that every rack has: first those that lead up, then the long ones, the bands, the tests. Each follows one published source, named
 * in its `source`. Frozen: who wants another copies one.
 */
export const builtInPrograms: readonly Program[] = [...firstHolds, ...strongBow, ...bandPrograms, ...builtInTests].map(
  (program) => freeze(programSchema.parse({ format: 'larkhold/program', version: 2, ...program })),
);

function freeze<T>(value: T): T {
  if (typeof value !== 'object' || value === null) return value;
  for (const part of Object.values(value)) freeze(part);
  return Object.freeze(value);
}
