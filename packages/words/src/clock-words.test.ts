import { describe, expect, it } from 'vitest';
import { clockWords, digitsOf } from './clock-words.ts';

// Expected values: plain arithmetic.
describe('digitsOf', () => {
  it.each([
    [30_000, '30'],
    [30_000.0001, '30'],
    [29_999, '30'],
    [1, '1'],
    [0, '0'],
    [-5, '0'],
    [99_000, '99'],
    [99_500, '1:40'],
    [180_000, '3:00'],
  ])('%f ms is %s', (msLeft, digits) => {
    expect(digitsOf(msLeft)).toBe(digits);
  });
});

describe('clockWords', () => {
  it.each([
    [45_000, '0:45'],
    [750_000, '12:30'],
    [3_750_000, '1:02:30'],
    [3_600_000, '1:00:00'],
  ])('%f ms is %s', (spanMs, words) => {
    expect(clockWords(spanMs)).toBe(words);
  });
});
