import { expect, test } from 'vitest';

test('of a page in English only English is there from the start; another language has to be loaded first', async () => {
  // A copy of the module that no other test has asked for anything.
  const url = `${new URL('./split-texts.ts', import.meta.url).href}?again`;
  const { loadTexts, textsOf }: typeof import('./split-texts.ts') = await import(/* @vite-ignore */ url);
  expect(textsOf('en')?.messages['line.begin']).toBe('Begin');
  expect(textsOf('de')).toBeUndefined();
  await loadTexts('de');
  expect(textsOf('de')?.messages['line.begin']).toBe('Beginnen');
});
