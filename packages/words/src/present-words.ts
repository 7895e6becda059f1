import { textsOf } from '#texts';
import { createWords, type Given, type ParametersOf, type PiecesOf, type Words } from './create-words.ts';
import { languageOf } from './language.ts';
import { localeHere } from './locale-here.ts';
import type { MessageKey } from './message-key.ts';

let present: Words | undefined;

/**
 * The words in use now.
 * @returns the words in use now
 */
export function presentWords(): Words {
  present ??= createWords(textsOf(languageOf(localeHere())) ? localeHere() : 'en');
  return present;
}

/**
 * Changes the language for all who read `presentWords`.
 * @param words as `createWords` gives them
 */
export function useWords(words: Words): void {
  present = words;
}

/**
 * A sentence in the present language.
 * @param key its name
 * @param given what it needs
 * @returns the sentence
 * @example say('line.begin') // 'Begin'
 */
export function say<Key extends MessageKey>(key: Key, ...given: Given<ParametersOf<Key>>): string {
  return presentWords().say(key, ...given);
}

/**
 * A sentence in the present language, in pieces.
 * @param key its name
 * @param given what it needs; a string may be a piece of another kind, as a Lit template
 * @returns strings and pieces in the language's order
 */
export function pieces<Key extends MessageKey, Piece>(
  key: Key,
  ...given: Given<PiecesOf<ParametersOf<Key>, Piece>>
): (string | Piece)[] {
  return presentWords().pieces<Key, Piece>(key, ...given);
}
