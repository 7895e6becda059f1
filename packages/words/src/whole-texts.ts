import { german as de } from './de/german.ts';
import { english as en } from './en/english.ts';
import type { Language } from './language.ts';
import type { LanguageTexts } from './language-texts.ts';

// What `#texts` is outside of a browser: every language, there from the start.
const all: Readonly<Record<Language, LanguageTexts>> = { en, de };

/**
 * What is written in a language.
 * @param language which
 * @returns its texts
 */
export function textsOf(language: Language): LanguageTexts | undefined {
  return all[language];
}

/**
 * Sees to it that a language's texts are there.
 * @param language which
 */
export async function loadTexts(language: Language): Promise<void> {
  void language; // they always are
}
