import { expect, test } from 'vitest';
import { createWords } from './create-words.ts';
import { languageOf, localeOf } from './language.ts';

test.each([
  ['de', 'de', 'de'],
  ['de-AT', 'de', 'de-AT'],
  ['en-US', 'en', 'en-US'],
  ['en-US-u-xx', 'en', 'en-US'],
  ['ar-EG-u-nu-arab', 'en', 'en-GB'],
  ['fr', 'en', 'en-GB'],
  ['C', 'en', 'en-GB'],
  ['', 'en', 'en-GB'],
  ['en_US.UTF-8', 'en', 'en-GB'],
])('%o speaks %s and writes numbers as %s', (tag, language, locale) => {
  expect(languageOf(tag)).toBe(language);
  expect(localeOf(tag)).toBe(locale);
  expect(createWords(tag).day('2026-11-25')).toContain('25');
});
