import { expect, it } from 'vitest';
import { isSureLetDown } from './sure-let-down.ts';

// Torso lengths; 0.1 is about 5 cm. What a twitch makes was measured on painted films.

it.each([
  ['the elbow leads, the hand follows late', { hand: 0.05, elbow: 0.2, gaveWay: 0.06 }],
  ['the draw gives way farther than a twitch', { hand: 0.05, elbow: 0.13, gaveWay: 0.1 }],
])('is sure: %s', (_name, moved) => {
  expect(isSureLetDown(moved)).toBe(true);
});

it.each([
  ['a twitch of 4 cm', { hand: 0.08, elbow: 0.14, gaveWay: 0.08 }],
  ['a hand that has not gone farther than a twitch of 2 cm takes it', { hand: 0.03, elbow: 0.3, gaveWay: 0.3 }],
  ['an elbow that swings while the draw stays', { hand: 0.08, elbow: 0.3, gaveWay: 0.04 }],
  ['a draw that gives way, the elbow hardly', { hand: 0.08, elbow: 0.1, gaveWay: 0.2 }],
  ['nothing that moves', { hand: 0, elbow: 0, gaveWay: 0 }],
])('is not sure: %s', (_name, moved) => {
  expect(isSureLetDown(moved)).toBe(false);
});
