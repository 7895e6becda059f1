import {
  isArgumentElement,
  isDateElement,
  isLiteralElement,
  isNumberElement,
  isPluralElement,
  isPoundElement,
  isSelectElement,
  type MessageFormatElement,
} from '@formatjs/icu-messageformat-parser';
import { describe, expect, it } from 'vitest';
import { parseMessage } from './create-words.ts';
import { english } from './en/english.ts';
import { fetchTexts } from './fetch-texts.ts';
import { languageTags } from './language.ts';
import type { MessageKey } from './message-key.ts';

/** What a message needs: `name: kind`, with the words that a select tells apart. */
function needs(elements: readonly MessageFormatElement[]): string[] {
  return elements.flatMap((element) => {
    if (isLiteralElement(element) || isPoundElement(element)) return [];
    if (isArgumentElement(element)) return [`${element.value}: text`];
    if (isNumberElement(element)) return [`${element.value}: number`];
    if (isPluralElement(element) || isSelectElement(element)) {
      const inside = Object.values(element.options).flatMap(({ value }) => needs(value));
      const kind = isPluralElement(element) ? 'number' : Object.keys(element.options).sort().join('|');
      return [`${element.value}: ${kind}`, ...inside];
    }
    return [`${element.value}: ${isDateElement(element) ? 'day' : 'instant'}`];
  });
}

const needsOf = (text: string, locale: string): string[] =>
  [...new Set(needs(parseMessage(text, locale).getAst()))].sort();

/** The options that a language's plural must have. */
function pluralsLacking(elements: readonly MessageFormatElement[], locale: string): string[] {
  return elements.flatMap((element) => {
    if (!isPluralElement(element) && !isSelectElement(element)) return [];
    const inside = Object.values(element.options).flatMap(({ value }) => pluralsLacking(value, locale));
    const categories = isPluralElement(element)
      ? new Intl.PluralRules(locale, { type: element.pluralType ?? 'cardinal' }).resolvedOptions().pluralCategories
      : ['other'];
    return [...categories.filter((category) => !(category in element.options)), ...inside];
  });
}

describe.each(languageTags)('%s', async (locale) => {
  const { messages } = await fetchTexts(locale);

  it('says every message in the message format, with every plural of its language', () => {
    for (const [key, text] of Object.entries(messages)) {
      expect([key, pluralsLacking(parseMessage(text, locale).getAst(), locale)]).toEqual([key, []]);
    }
  });

  it('needs what English needs, and nothing else', () => {
    for (const [key, text] of Object.entries(messages)) {
      expect([key, needsOf(text, locale)]).toEqual([key, needsOf(english.messages[key as MessageKey], 'en')]);
    }
  });

  it('names one parameter in one way', () => {
    for (const [key, text] of Object.entries(messages)) {
      const names = needsOf(text, locale).map((need) => need.split(':')[0]);
      expect([key, names]).toEqual([key, [...new Set(names)]]);
    }
  });
});
