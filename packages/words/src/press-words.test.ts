import { expect, test } from 'vitest';
import { pressWords } from './press-words.ts';

// The words are the product's own: no outside source.
test.each([
  ['Space', 'Space bar'],
  ['KeyL', 'Key L'],
  ['Digit3', 'Key 3'],
  ['Numpad3', 'Key 3, number pad'],
  ['Gamepad:0', 'Gamepad button 1'],
  ['Clap', 'Clap'],
  ['BrowserBack', 'BrowserBack'],
])('%s is called %s', (code, words) => {
  expect(pressWords(code)).toBe(words);
});
