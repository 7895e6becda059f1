import type { Archer } from '../archer/archer.ts';
import type { Program } from '../program/program.ts';
import { dateWords } from './number-words.ts';

/** What a caution reads, by its rule. */
export interface CautionFacts {
  painOn: { on: string };
  lighterTool: { days: number };
  youngChild: { ageYears: number };
  young: { ageYears: number };
  compound: { bow: string };
  dryFire: { tool: string };
  band: { tool: string };
  flexible: { drill: string };
  structural: { drill: string };
  opposite: { hand: string };
  stopOnPain: { tool: string };
  coachFirst: { tool: string };
}

/** One caution as data. */
export type Caution = { [R in keyof CautionFacts]: { rule: R; facts: CautionFacts[R] } }[keyof CautionFacts];

const sentences: { [R in keyof CautionFacts]: (facts: CautionFacts[R]) => string } = {
  painOn: ({ on }) =>
    `There was pain on ${dateWords(on)}. Stop today if it comes again, and see a doctor or a physiotherapist if it stays. Pain is pain in a joint or a sharp pain, not tired muscles.`,
  lighterTool: ({ days }) =>
    `${days} days without a bow or a band: begin with lighter limbs or a stretch band, and without added weight.`,
  youngChild: () => 'Under 12: a stretch band only, with a coach or another adult beside you.',
  young: () => 'Under 16: a light bow, no added weight, and a coach who knows the plan.',
  compound: () =>
    'A compound bow pulls hard as it is let down, and this drill lets down often. Keep both elbows high, let down slowly, and have a coach watch you first.',
  dryFire: () => 'Never let go of a drawn string with no arrow on it. Let down slowly, every time.',
  band: () => 'Check the band for cracks, anchor it well, and keep it out of line with your eyes.',
  flexible: () => 'An arrow is on the string: stand close to a safe backstop, with nobody near the line of flight.',
  structural: () => 'Learn this drill from a qualified coach before you do it alone.',
  opposite: () => 'The opposite hand is weaker: take a lighter bow or a band.',
  stopOnPain: () => 'Warm up first. Stop on pain; if it stays, see a doctor or a physiotherapist.',
  coachFirst: () => "A qualified coach's word, club rules and local rules come before this plan.",
};

/**
 * A caution in words.
 * @param caution its rule and facts
 * @returns one or two plain sentences
 */
export function cautionWords({ rule, facts }: Caution): string {
  return (sentences[rule] as (facts: unknown) => string)(facts);
}

/**
 * The cautions for what is drawn, how, and by whom. They defer to a coach, a doctor, and club and local rules.
 * @param program the program, with today's tool
 * @param archer age and bow, where known
 * @param lately the day of the last pain that still counts, and days away where they are a year or more
 * @returns rules and facts, the gravest first
 */
export function cautionsFor(
  program: Pick<Program, 'tool' | 'blocks'>,
  { ageYears, bow }: Archer = {},
  lately: { painOn?: string; yearAwayDays?: number } = {},
): Caution[] {
  const { tool, blocks } = program;
  const isBow = tool === 'bow' || tool === 'light-bow';
  const cautions: Caution[] = [];
  const add = <R extends keyof CautionFacts>(rule: R, facts: CautionFacts[R]) =>
    cautions.push({ rule, facts } as Caution);
  if (lately.painOn !== undefined) add('painOn', { on: lately.painOn });
  if (lately.yearAwayDays !== undefined) add('lighterTool', { days: lately.yearAwayDays });
  if (ageYears !== undefined && ageYears < 16) add(ageYears < 12 ? 'youngChild' : 'young', { ageYears });
  if (bow === 'compound' && isBow) add('compound', { bow });
  add(isBow ? 'dryFire' : 'band', { tool });
  const flexible = blocks.find(({ drill }) => drill === 'flexibility');
  if (flexible) add('flexible', { drill: flexible.drill });
  const structural = blocks.find(({ drill }) => drill === 'structure');
  if (structural) add('structural', { drill: structural.drill });
  const opposite = blocks.find(({ hand }) => hand !== 'usual');
  if (opposite) add('opposite', { hand: opposite.hand });
  add('stopOnPain', { tool });
  add('coachFirst', { tool });
  return cautions;
}
