import type { Sayer } from '@larkhold/engine';
import type { Words } from './create-words.ts';

/**
 * A language as the engine says a prescription in it.
 * @param words the language: it has every sentence of the engine with the same parameters, which the type checker can't follow through generic keys
 * @returns the same
 */
export function sayerOf(words: Words): Sayer {
  return words as unknown as Sayer;
}
