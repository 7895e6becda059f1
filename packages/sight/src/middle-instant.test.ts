import { expect, it } from 'vitest';
import { middleInstant } from './middle-instant.ts';

const followed = (atMs: number) => ({ atMs, isFollowed: true });
const faded = (atMs: number) => ({ atMs, isFollowed: false });

// The rule worked out by hand.
it.each([
  ['the model alone', [], 5_000],
  ['one edge that is near', [faded(5_390)], 5_390],
  ['one edge that is too far to be believed, after', [followed(5_400)], 5_000],
  ['one edge that is too far to be believed, before', [faded(4_500)], 5_000],
  ['two of three', [faded(5_100), faded(5_300)], 5_100],
  ['one that was followed counts twice: 5,000, 5,100 and twice 5,200', [faded(5_100), followed(5_200)], 5_150],
  ['both followed: 5,000, twice 5,100 and twice 5,300', [followed(5_100), followed(5_300)], 5_100],
])('is %s', (_name, edges, expected) => {
  expect(middleInstant(5_000, edges)).toBe(expected);
});
