import { builtInPrograms, layOut, predictSession, prescribe } from '@larkhold/engine';
import { expect, test } from 'vitest';
import { curveWords } from './fatigue-words.ts';

const today = '2026-11-25';
const of = (title: string) =>
  prescribe({ program: builtInPrograms.find((one) => one.title === title)!, records: [], today });
const wordsOf = (title: string, maxHoldSeconds: number) =>
  curveWords(predictSession(layOut(of(title)), { maxHoldSeconds }), of(title)).replaceAll('\u00a0', ' ');

test('a hold longer than the longest fails in the first rep, at that second', () => {
  // By definition of the longest hold: a single hold of 30 s fails at 20 s for who can hold 20 s.
  expect(wordsOf('Holding', 20)).toBe('By the estimate you could no longer hold in rep 1 of set 1, after 20 s.');
});

test('where all is held the words say what is left, and where it is lowest', () => {
  expect(wordsOf('Club starter', 120)).toMatch(
    /^You should hold all 5. At the hardest moment about \d+ % is left \(an estimate\). After the first hold \d+ % is left. The hardest moment is in rep 5.$/,
  );
});
