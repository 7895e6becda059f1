import { expect, test } from 'vitest';
import { placeWords, timeLeftWords } from './place-words.ts';

const progress = {
  repsDone: 13,
  repsTotal: 30,
  set: 1,
  sets: 3,
  rep: 3,
  reps: 10,
  block: 0,
  blocks: 1,
  msLeft: 724_100,
};

// The words are the product's own: no outside source.
test('places count from one', () => {
  expect(placeWords({ progress })).toBe('Set 2 of 3 · rep 4 of 10');
});

test('time left is shown until it is over', () => {
  expect(timeLeftWords({ state: 'running', progress })).toBe('12:05 left');
  expect(timeLeftWords({ state: 'waiting', progress })).toBe('12:05 in all');
  expect(timeLeftWords({ state: 'stopped', progress })).toBe('');
});
