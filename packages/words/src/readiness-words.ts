import type { DayEntry, Prescription } from '@larkhold/engine';
import type { Words } from './create-words.ts';
import { presentWords } from './present-words.ts';
import { reasonWords } from './reason-words.ts';

/** Today's own word before drilling. */
export type Readiness = NonNullable<DayEntry['readiness']>;

/** The words, as they are offered. */
export const readinessChoices = ['fresh', 'as usual', 'heavy'] as const satisfies readonly Readiness[];

/**
 * Today's own word, as it is offered.
 * @param readiness the word as the journal keeps it
 * @param words the language
 * @returns 'as usual'
 */
export function readinessWord(readiness: Readiness, words: Words = presentWords()): string {
  return words.say(`readiness.${readiness === 'as usual' ? 'usual' : readiness}`);
}

/**
 * What today's own word did to the numbers, and why.
 * @param readiness the word, if one was said
 * @param prescription today's numbers, made with it
 * @param words the language
 * @returns sentences; empty when nothing was said
 */
export function readinessWords(
  readiness: Readiness | undefined,
  { reasons }: Prescription,
  words: Words = presentWords(),
): string {
  if (readiness === undefined) return '';
  if (readiness === 'as usual') return words.say('readiness.usualEffect');
  if (readiness === 'fresh') return words.say('readiness.freshEffect');
  const cuts = reasons.filter(({ rule }) => rule === 'heavy').map((reason) => reasonWords(reason, words));
  if (cuts.length > 0) return cuts.join(' ');
  const eases = ['deload', 'taper', 'pain', 'effort', 'arrows'];
  const deeper = reasons.filter(({ rule }) => eases.includes(rule)).map((reason) => reasonWords(reason, words));
  return [words.say('readiness.heavyNoMore'), ...deeper].join(' ');
}
