import type { Words } from './create-words.ts';
import { presentWords } from './present-words.ts';

/** The five steps of feel, in order. */
export const feelSteps = ['poor', 'flat', 'allRight', 'good', 'veryGood'] as const;

/** One step of feel. */
export type FeelStep = (typeof feelSteps)[number];

/**
 * A step of feel in a word.
 * @param step of the five
 * @param words the language
 * @returns 'All right'
 */
export function feelWord(step: FeelStep, words: Words = presentWords()): string {
  return words.say(`feel.${step}`);
}

/**
 * That the archer felt so, for a line of what a day was.
 * @param feel 1 to 5
 * @param words the language
 * @returns 'felt good'
 */
export function feltWords(feel: number, words: Words = presentWords()): string {
  return words.say('feel.felt', { step: feelSteps[feel - 1] ?? 'other' });
}
