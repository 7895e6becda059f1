import type { Program } from '../program/program.ts';

/**
 * The usual cautions for what is drawn and how. They defer to a coach, a doctor, and club and local rules.
 * @param program the program
 * @returns short sentences, the gravest first
 */
export function cautionsFor(program: Program): string[] {
  const { tool, blocks } = program;
  const isBow = tool === 'bow' || tool === 'light-bow';
  const flexible = blocks.some(({ drill }) => drill === 'flexibility');
  const structural = blocks.some(({ drill }) => drill === 'structure');
  const opposite = blocks.some(({ hand }) => hand !== 'usual');
  return [
    isBow && 'Never let go of a drawn string with no arrow on it. Let down slowly, every time.',
    !isBow && 'Check the band for cracks, anchor it well, and keep it out of line with your eyes.',
    flexible && 'An arrow is on the string: stand close to a safe backstop, with nobody near the line of flight.',
    structural && 'Learn this drill from a qualified coach before you do it alone.',
    opposite && 'The opposite hand is weaker: take a lighter bow or a band.',
    'Warm up first. Stop on pain; if it stays, see a doctor or a physiotherapist.',
    "A qualified coach's word, club rules and local rules come before this plan.",
  ].filter((caution) => caution !== false);
}
