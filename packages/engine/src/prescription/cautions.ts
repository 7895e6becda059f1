import type { Archer } from '../archer/archer.ts';
import type { Program } from '../program/program.ts';
import { fillSentence } from '../units/fill-sentence.ts';
import { cautionSentences } from './prescription-sentences.ts';

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

/**
 * A caution in words.
 * @param caution its rule and facts
 * @returns one or two plain sentences
 */
export function cautionWords({ rule, facts }: Caution): string {
  return fillSentence(cautionSentences[`caution.${rule}`], facts);
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
