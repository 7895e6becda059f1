import { fetchTexts } from './fetch-texts.ts';
import { type Language, languageTags } from './language.ts';
import type { LanguageTexts } from './language-texts.ts';

// What `#texts` is outside of a browser: every language, there from the start.
const all = new Map<Language, LanguageTexts>(
  await Promise.all(languageTags.map(async (tag) => [tag, await fetchTexts(tag)] as const)),
);

/**
 * What is written in a language.
 * @param language which
 * @returns its texts
 */
export function textsOf(language: Language): LanguageTexts | undefined {
  return all.get(language);
}

/**
 * Sees to it that a language's texts are there.
 * @param language which
 */
export async function loadTexts(language: Language): Promise<void> {
  void language; // they always are
}
