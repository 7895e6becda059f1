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
 * The caution of a drawn string, where nothing is shot.
 * @param prescription today's
 * @param words the language
 * @returns one or two short sentences; undefined where it does not apply
 */
export function drawnStringCaution({ cautionFacts }: Prescription, words: Words = presentWords()): string | undefined {
  const caution = cautionFacts?.find(({ rule }) => rule === 'dryFire');
  return caution && cautionWords(caution, words);
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
