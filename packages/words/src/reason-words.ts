import { type LadderFacts, type Reason, sayNext, sayReason } from '@larkhold/engine';
import type { Words } from './create-words.ts';
import { presentWords } from './present-words.ts';
import { sayerOf } from './sayer-of.ts';

/**
 * A rule that acted on a prescription, in words.
 * @param reason its rule and facts
 * @param words the language
 * @returns one or more plain sentences
 */
export function reasonWords(reason: Reason, words: Words = presentWords()): string {
  return sayReason(reason, sayerOf(words));
}

/**
 * What leads on from a place on a ladder.
 * @param facts where a block is, as a ladder's reason says it
 * @param words the language
 * @returns one plain sentence
 */
export function nextStep(facts: LadderFacts, words: Words = presentWords()): string {
  return sayNext(facts, sayerOf(words));
}
