import type { DayStyle, Given, ParametersOf as NeedsOf, NumberStyle } from '@larkhold/engine';
import { type Formatters, IntlMessageFormat, type Formats as Styles } from 'intl-messageformat';
import { loadTexts, textsOf } from '#texts';
import { createFormats, type Formats } from './formats.ts';
import { type Language, languageOf, localeOf } from './language.ts';
import type { EnglishMessages, MessageKey } from './message-key.ts';

export type { Given };

/** What a sentence needs; where the key may be one of several, what all of them need. */
export type ParametersOf<Key extends MessageKey> = NeedsOf<EnglishMessages, Key>;

/** The parameters of a sentence in pieces: what is a string may be a piece of another kind, as a button. */
export type PiecesOf<Needs, Piece> = {
  [Name in keyof Needs]: string extends Needs[Name] ? Needs[Name] | Piece : Needs[Name];
};

/** Every sentence and number of Larkhold in one language, as one locale writes it. */
export interface Words extends Formats {
  readonly language: Language;
  /** What numbers and days follow, BCP 47. */
  readonly locale: string;
  /** A sentence. */
  say<Key extends MessageKey>(key: Key, ...given: Given<ParametersOf<Key>>): string;
  /** A sentence in pieces, in the language's own order, to put buttons or emphasis into it. */
  pieces<Key extends MessageKey, Piece>(
    key: Key,
    ...given: Given<PiecesOf<ParametersOf<Key>, Piece>>
  ): (string | Piece)[];
}

/**
 * The words of a locale, when they have been loaded: ready at once in Node, where all languages are.
 * @param locale BCP 47, as a browser or a system gives it; what is no tag, or names a language Larkhold does not speak, gives English
 * @returns sentences in its language, numbers and days in its own way
 * @example (await loadWords('de-AT')).say('line.begin') // 'Beginnen'
 */
export async function loadWords(locale: string): Promise<Words> {
  await loadTexts(languageOf(locale));
  return createWords(locale);
}

/**
 * The words of a locale at once.
 * @param locale BCP 47, as a browser or a system gives it; what is no tag, or names a language Larkhold does not speak, gives English
 * @returns sentences in its language, numbers and days in its own way
 * @throws RangeError in a browser, where that language has not been loaded: only that of the page is there from the start
 * @example createWords('de-AT').say('line.begin') // 'Beginnen'
 */
export function createWords(locale: string): Words {
  const language = languageOf(locale);
  const texts = textsOf(language);
  if (!texts) throw new RangeError(`locale: expected a loaded language, got '${locale}'. Await loadWords first.`);
  const { messages } = texts;
  const tag = localeOf(locale);
  const formats = createFormats(tag);
  const formatters = formattersOf(formats, tag);
  const parsed = new Map<MessageKey, IntlMessageFormat>();
  const format = (key: MessageKey, given: Record<string, unknown> | undefined) => {
    const message = parsed.get(key) ?? parseMessage(messages[key], tag, formatters);
    parsed.set(key, message);
    return message.formatToParts<unknown>(given).map(({ value }) => value);
  };
  return {
    ...formats,
    language,
    locale: tag,
    say: (key, ...[given]) => format(key, given as Record<string, unknown>).join(''),
    pieces: <Piece>(key: MessageKey, ...[given]: unknown[]) =>
      format(key, given as Record<string, unknown>) as (string | Piece)[],
  };
}

/** Styles by name. The library hands a style to its formatter as options, so each carries its own name there. */
const named = <Style extends string>(names: readonly Style[]) =>
  Object.fromEntries(names.map((name) => [name, { name }])) as Record<Style, { name: Style }>;
const numberStyles = named<NumberStyle>(['tenths', 'seconds', 'duration', 'minutes', 'share', 'ratio', 'impulse']);
const dayStyles = named<DayStyle>(['long', 'longYear', 'short', 'shortYear', 'year', 'plain']);

/**
 * A message, ready to be filled in.
 * @param text in the Unicode (ICU) message format, without markup
 * @param locale what its plurals follow
 * @param formatters how it writes numbers and days
 * @returns the message
 * @throws SyntaxError when the text is not in that format
 */
export function parseMessage(text: string, locale: string, formatters?: Formatters): IntlMessageFormat {
  // A count and its noun stay on one line.
  const bound = text.replaceAll('# ', '#\u00a0');
  const styles = { number: numberStyles, date: dayStyles, time: {} } as unknown as Partial<Styles>;
  return new IntlMessageFormat(bound, locale, styles, { ignoreTag: true, ...(formatters && { formatters }) });
}

/** Our own units in the library's place: it looks a style up by its name and asks for a formatter with what it finds. */
function formattersOf(formats: Formats, locale: string): Formatters {
  const plurals = {
    cardinal: new Intl.PluralRules(locale, { type: 'cardinal' }),
    ordinal: new Intl.PluralRules(locale, { type: 'ordinal' }),
  };
  return {
    getNumberFormat: (_, style) => {
      const { name = 'tenths' } = (style ?? {}) as { name?: NumberStyle };
      return { format: formats[name] } as Intl.NumberFormat;
    },
    getDateTimeFormat: (_, style) => {
      const { name } = (style ?? {}) as { name?: DayStyle };
      const format = (value: string) => (name === undefined ? formats.timeOfDay(value) : formats.day(value, name));
      return { format } as unknown as Intl.DateTimeFormat;
    },
    getPluralRules: (_, options) => plurals[options?.type ?? 'cardinal'],
  };
}
