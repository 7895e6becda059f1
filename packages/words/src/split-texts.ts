import { fetchTexts } from './fetch-texts.ts';
import { type Language, languageOf } from './language.ts';
import type { LanguageTexts } from './language-texts.ts';
import { localeHere } from './locale-here.ts';

// What `#texts` is in a browser: each language is a part of its own, and only what is spoken is fetched.
const loaded = new Map<Language, LanguageTexts>();

/**
 * What is written in a language.
 * @param language which
 * @returns its texts; undefined where they are not loaded
 */
export function textsOf(language: Language): LanguageTexts | undefined {
  return loaded.get(language);
}

/**
 * Sees to it that a language's texts are there.
 * @param language which
 * @returns resolves when they are; rejects where they can't be fetched
 */
export async function loadTexts(language: Language): Promise<void> {
  if (!loaded.has(language)) loaded.set(language, await fetchTexts(language));
}

// Whoever imports the words finds those of the page: nothing is drawn before they are there, and nothing in another language.
// A worker has no page: what speaks there awaits `loadWords` first.
const here = languageOf(localeHere());
if (globalThis.document)
  await loadTexts(here).catch((cause: unknown) => {
    // Better in English than not at all.
    if (here === 'en') throw cause;
    return loadTexts('en');
  });
