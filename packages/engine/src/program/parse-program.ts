import { type ProgramMigration, programMigrations, programVersion } from './migrate-program.ts';
import type { Problem } from './problem.ts';
import { mostBlocks, type Program, programSchema } from './program.ts';
import { checkBlock, checkLength, checkTest, type RuleBreak } from './program-rules.ts';
import { largestFileBytes, readPlacedFile } from './read-placed-file.ts';

/** The largest program file that is read, bytes of UTF-8. */
export const largestProgramBytes = largestFileBytes;

export { mostProblems } from './read-placed-file.ts';

/** More commas than a program has: one as large as the schema allows has fewer than 4400. */
const mostCommas = 4500;

/** A program, or everything that is wrong with its file. */
export type ParsedProgram = { ok: true; program: Program } | { ok: false; problems: Problem[] };

/**
 * Reads a program file: is it ours, is it too new, migrate, validate.
 * @param text the file's text (JSON); a byte order mark at its start is passed over
 * @param migrations the steps from older versions; the shipped ones by default
 * @returns the program with its defaults filled in, or its problems with pointer, line and column: the first 200, and how many more there are
 * @example parseProgram('{}').ok === false
 */
export function parseProgram(
  text: string,
  migrations: Readonly<Record<number, ProgramMigration>> = programMigrations,
): ParsedProgram {
  const read = readPlacedFile(text, {
    ...{ name: 'larkhold/program', thing: 'program', version: programVersion, migrations },
    ...{ schema: programSchema, mostCommas, check: checkRules },
  });
  return read.ok ? { ok: true, program: read.value } : read;
}

/** The rules between keys, as far as the schema's own complaints leave something to check: block by block. */
function checkRules({ blocks, kind, measure }: Record<string, unknown>, version: number): RuleBreak[] {
  if (!Array.isArray(blocks)) return checkTest({ version, kind, measure, blocks: [] });
  const read = blocks.slice(0, mostBlocks).map((block) => programSchema.shape.blocks.element.safeParse(block));
  const breaks = [
    ...checkTest({ version, kind, measure, blocks: read.map(({ data }) => data) }),
    ...read.flatMap(({ data }, index) => (data ? checkBlock(data, index, blocks.length) : [])),
  ];
  const sound = read.flatMap(({ data }) => data ?? []);
  return sound.length === blocks.length ? [...breaks, ...checkLength(sound)] : breaks;
}
