/** The languages Larkhold speaks: each has a line here, one in `fetch-texts.ts`, and a folder. `usualLocale`: what numbers follow where a tag names no region. */
const spoken = {
  en: { name: 'English', usualLocale: 'en-GB' },
  de: { name: 'Deutsch', usualLocale: 'de' },
} as const;

/** A language Larkhold speaks. */
export type Language = keyof typeof spoken;

/** The tags of the languages Larkhold speaks, English first. */
export const languageTags = Object.keys(spoken) as [Language, ...Language[]];

/** The languages Larkhold speaks, each by its own name. */
export const languages = Object.fromEntries(languageTags.map((tag) => [tag, spoken[tag].name])) as {
  readonly [Tag in Language]: (typeof spoken)[Tag]['name'];
};

/**
 * The language that serves a locale.
 * @param tag BCP 47, as a browser or a system gives it; anything else counts as unknown
 * @returns the tag's own language where Larkhold speaks it, else English
 * @example languageOf('de-AT') // 'de'
 */
export function languageOf(tag: string): Language {
  return isSpoken(tag) ? (localeOrNone(tag)?.language as Language) : 'en';
}

/**
 * The locale that numbers and days follow: the reader's own kind of the language.
 * @param tag BCP 47, as a browser or a system gives it; anything else counts as unknown
 * @returns a tag that `Intl` accepts, without extensions
 * @example localeOf('en-US-u-nu-arab') // 'en-US'
 * @example localeOf('C') // 'en-GB'
 */
export function localeOf(tag: string): string {
  const locale = localeOrNone(tag);
  const language = languageOf(tag);
  return locale?.language === language && locale.region !== undefined ? locale.baseName : spoken[language].usualLocale;
}

/**
 * Whether a tag names a language that Larkhold speaks.
 * @param tag BCP 47, or anything else
 * @returns false also for what is no tag
 * @example isSpoken('fr') // false
 */
export function isSpoken(tag: string): boolean {
  const language = localeOrNone(tag)?.language;
  return language !== undefined && Object.hasOwn(languages, language);
}

function localeOrNone(tag: string): Intl.Locale | undefined {
  try {
    return new Intl.Locale(tag);
  } catch {
    return undefined; // "", "C", "en_US.UTF-8": not a tag, so nothing is known
  }
}
