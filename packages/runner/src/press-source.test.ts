import { expect, test } from 'vitest';
import { createPressGuard } from './press-source.ts';

// 300 ms: the product's own rule.
test('one code counts once in 300 ms; another code counts at once', () => {
  let nowMs = 0;
  const counts = createPressGuard(() => nowMs);
  expect(counts('Clap')).toBe(true);
  nowMs = 299;
  expect(counts('Clap')).toBe(false);
  expect(counts('Space')).toBe(true);
  nowMs = 300;
  expect(counts('Clap')).toBe(true);
});

test('a repeat that is left out does not put the next one off', () => {
  let nowMs = 0;
  const counts = createPressGuard(() => nowMs);
  const heard = [];
  for (nowMs = 0; nowMs <= 600; nowMs += 100) heard.push(counts('Space'));
  expect(heard).toEqual([true, false, false, true, false, false, true]);
});
