import { builtInPrograms } from './built-in-programs.ts';
import type { Program } from './program.ts';

/**
 * Which programs come after one, the likeliest first. Own, from the published ranges: each begins no harder than the one before it ends, in the length
 * of a hold and in the whole of a morning. Blocks of 4 to 8 weeks are meant to alternate (usarchery.org, 2020), so the strongest lead to each other.
 */
const follows: Readonly<Record<string, readonly string[]>> = {
  'Club starter': ['Half an hour of fifteens', 'Twenty holds'],
  'Half an hour of fifteens': ['Twenty holds'],
  'Twenty holds': ['Holding', 'Half an hour of thirties', 'One set of ten'],
  'One set of ten': ['Half an hour of thirties', 'Holding'],
  'Half an hour of thirties': ['Holding', 'Power'],
  Holding: ['Power', 'Laddered holding'],
  'Laddered holding': ['Power', 'Holding'],
  Power: ['Holding', 'Laddered holding'],
  'Travel band': ['Band evening', 'Club starter'],
  'Band evening': ['Half an hour of fifteens', 'Twenty holds'],
};

const byTitle = new Map(builtInPrograms.map((program) => [program.title, program]));
const byId = new Map(
  Object.entries(follows).map(([title, next]) => [
    byTitle.get(title)?.id,
    next.flatMap((one) => byTitle.get(one) ?? []),
  ]),
);

/**
 * What an archer may go on to when a built-in program is outgrown: to be offered, never forced.
 * @param program any program; it is known by its id, so a renamed one is known and a copy under an id of its own is not
 * @returns built-in programs, the likeliest first; empty for a test, for a program of the archer's own, and where there is nothing further
 * @source own, from the published ranges that each program names
 * @example nextPrograms(builtInPrograms[0]!).map(({ title }) => title) // after the club starter
 */
export function nextPrograms(program: Program): readonly Program[] {
  return (program.id === undefined ? undefined : byId.get(program.id)) ?? [];
}
