import { expect, test } from 'vitest';
import { createSampleClock } from './sample-clock.ts';

// 1,000 samples a second, in pieces of 20: each piece is 20 ms long.
const heardAt = (comesAtMs: (piece: number) => number, pieces: number) => {
  const clock = createSampleClock(1000);
  for (let piece = 1; piece <= pieces; piece++) clock.heard(20, comesAtMs(piece));
  return clock;
};

test('a busy page that takes pieces in late does not move the moment', () => {
  const clock = heardAt((piece) => 5000 + Math.max(piece * 20, piece > 20 && piece <= 60 ? 1200 : 0), 60);
  expect(clock.atMs(0.5)).toBe(5500);
});

test('after the sound stood still for two seconds, it goes by the pieces that came since', () => {
  const clock = heardAt((piece) => 5000 + piece * 20 + (piece > 100 ? 2000 : 0), 100 + 256);
  expect(clock.atMs(7)).toBe(14_000);
});
