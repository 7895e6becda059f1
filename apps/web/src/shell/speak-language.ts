import { type Language, languageOf, loadWords, presentWords, useWords } from '@larkhold/words';

/** Where the chosen language is kept for the next start: `public/first-language.js` reads it before the kit can be. */
const KEPT = 'larkhold-language';

/** What a speaker reaches. */
export interface SpeakerParts {
  /** The browser's own language, BCP 47. */
  browserLanguage: string;
  document: Pick<Document, 'documentElement'>;
  storage: () => Pick<Storage, 'setItem' | 'removeItem'>;
  /** After each change to another language. */
  onChange: () => void;
}

/**
 * Lets the app speak the kit's language, in the reader's own kind of it; the browser's where the kit names none.
 * @param parts what it reaches
 * @returns call it with the kit's language; it resolves when that language is spoken. Where it can't be fetched, the present one stays
 */
export function createSpeaker({ browserLanguage, document, storage, onChange }: SpeakerParts) {
  let wanted: string | undefined;
  return async (language: Language = languageOf(browserLanguage)): Promise<void> => {
    const locale = language === languageOf(browserLanguage) ? browserLanguage : language;
    if (locale !== wanted) keep(storage, locale === browserLanguage ? undefined : locale);
    wanted = locale;
    if (language !== presentWords().language) {
      const words = await loadWords(locale).catch(() => undefined); // the page says that a part is missing
      if (words && locale === wanted && language !== presentWords().language) {
        useWords(words);
        onChange();
      }
    }
    document.documentElement.lang = presentWords().locale;
  };
}

function keep(storage: SpeakerParts['storage'], locale: string | undefined): void {
  try {
    if (locale === undefined) storage().removeItem(KEPT);
    else storage().setItem(KEPT, locale);
  } catch {
    // a browser that keeps nothing: the kit is asked at each start
  }
}
