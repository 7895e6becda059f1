import type { Language } from './language.ts';
import type { LanguageTexts } from './language-texts.ts';

// Apart from the list of languages: whoever needs only their names, as a worker that reads files, gets no texts built along.
const parts: Readonly<Record<Language, () => Promise<LanguageTexts>>> = {
  en: async () => (await import('./en/english.ts')).english,
  de: async () => (await import('./de/german.ts')).german,
};

/**
 * Fetches what is written in a language.
 * @param language which
 * @returns its texts; rejects where they can't be fetched
 */
export function fetchTexts(language: Language): Promise<LanguageTexts> {
  return parts[language]();
}
