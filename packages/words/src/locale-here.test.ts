import { afterEach, expect, test, vi } from 'vitest';
import { localeHere } from './locale-here.ts';

afterEach(() => vi.unstubAllGlobals());

// Own decision: the page around an element says what its readers read; their browser, which kind of it.
test.each([
  { page: 'de', browser: 'en-US', locale: 'de' },
  { page: 'de', browser: 'de-AT', locale: 'de-AT' },
  { page: 'de-CH', browser: 'de-AT', locale: 'de-CH' },
  { page: 'en', browser: 'en-US', locale: 'en-US' },
  { page: 'fr', browser: 'de-AT', locale: 'de-AT' },
  { page: '', browser: 'de', locale: 'de' },
  { page: 'no tag', browser: '', locale: '' },
])('a page in $page, a browser in $browser: $locale', ({ page, browser, locale }) => {
  vi.stubGlobal('document', { documentElement: { lang: page } });
  vi.stubGlobal('navigator', { language: browser });
  expect(localeHere()).toBe(locale);
});

test('no page and no browser: nothing is known', () => {
  vi.stubGlobal('navigator', undefined);
  expect(localeHere()).toBe('');
});
