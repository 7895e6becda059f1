import { type AskedNumber, type Prescription, sayWhy } from '@larkhold/engine';
import type { Words } from './create-words.ts';
import { presentWords } from './present-words.ts';
import { sayerOf } from './sayer-of.ts';

/**
 * Why a number of a prescription is what it is.
 * @param prescription today's, as `prescribe` gave it
 * @param block the block's index in the program; of no matter for 'duration', which is the whole drill's
 * @param number which number
 * @param words the language
 * @returns plain sentences, one string for each reason
 */
export function whyWords(
  prescription: Prescription,
  block: number,
  number: AskedNumber,
  words: Words = presentWords(),
): string[] {
  return sayWhy(prescription, block, number, sayerOf(words));
}
