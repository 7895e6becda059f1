import type { Caution, Prescription } from '@larkhold/engine';
import type { Words } from './create-words.ts';
import { presentWords } from './present-words.ts';

/**
 * A caution in words.
 * @param caution its rule and facts
 * @param words the language
 * @returns one or two plain sentences
 */
export function cautionWords({ rule, facts }: Caution, words: Words = presentWords()): string {
  if (rule === 'painOn') return words.say('caution.painOn', { on: facts.on });
  if (rule === 'lighterTool') return words.say('caution.lighterTool', { days: facts.days });
  return words.say(`caution.${rule}`);
}

/**
 * The cautions of a prescription, the gravest first.
 * @param prescription today's
 * @param words the language
 * @returns short sentences
 */
export function cautionsOf({ cautionFacts, cautions }: Prescription, words: Words = presentWords()): string[] {
  return cautionFacts?.map((caution) => cautionWords(caution, words)) ?? cautions;
}
