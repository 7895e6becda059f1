import { builtInPrograms, layOut, predictSession, prescribe } from '@larkhold/engine';
import { expect, test } from 'vitest';
import { createWords } from './create-words.ts';
import { curveWords, outlookWords, rangeWords } from './fatigue-words.ts';

const german = createWords('de');

const today = '2026-11-25';
const of = (title: string) =>
  prescribe({ program: builtInPrograms.find((one) => one.title === title)!, records: [], today });
const wordsOf = (title: string, maxHoldSeconds: number) =>
  curveWords(predictSession(layOut(of(title)), { maxHoldSeconds }), of(title)).replaceAll('\u00a0', ' ');

test('a hold longer than the longest fails in the first rep, at that second', () => {
  // By definition of the longest hold: a single hold of 30 s fails at 20 s for who can hold 20 s.
  expect(wordsOf('Holding', 20)).toBe('By the estimate you could no longer hold in rep 1 of set 1, after 20 s.');
});

test('where next to nothing is left, the words do not say that it should go well', () => {
  const prescription = of('Club starter');
  const left = (reserve: number, count = 8) => ({
    reps: Array.from({ length: count }, (_, rep) => ({
      block: 0,
      set: 0,
      rep,
      reserve: rep === count - 1 ? reserve : 0.5,
    })),
    curve: [],
  });
  for (const reserve of [0, 0.004, 0.049]) {
    const inWords = outlookWords(left(reserve), prescription);
    expect(inWords).toMatch(/^By the estimate you can only just hold all 8: the hardest will be at your limit/);
    expect(inWords).not.toMatch(/should|0\s%/);
    expect(outlookWords(left(reserve, 1), prescription)).toMatch(/^By the estimate you can only just hold it:/);
    expect(rangeWords(left(reserve), 30_000, prescription)).toMatch(
      /can only just hold every rep, the hardest at your limit/,
    );
    expect(outlookWords(left(reserve), prescription, german)).toMatch(
      /^Nach der Schätzung kannst du alle 8 nur gerade noch halten/,
    );
  }
  expect(outlookWords(left(0.06), prescription)).toMatch(/^You should hold all 8\. .* 6\s% is left/);
});

test('where only the model sees all held, the careful reading is said, in both languages', () => {
  const prescription = of('Club starter');
  const prediction = predictSession(layOut(prescription), { maxHoldSeconds: 120 });
  const limit = { block: 0, set: 0, rep: 3 };
  expect(outlookWords(prediction, prescription, undefined, { limit })).toMatch(
    /careful reading.* your limit is rep 4\. /,
  );
  expect(outlookWords(prediction, prescription, german, { limit })).toMatch(/Wiederholung 4 Schluss/);
  expect(outlookWords(prediction, prescription)).toMatch(/^You should hold all/);
});

test('where all is held the words say what is left, and where it is lowest', () => {
  expect(wordsOf('Club starter', 120)).toMatch(
    /^You should hold all 5. At the hardest moment about \d+ % is left \(an estimate\). After the first hold \d+ % is left. The hardest moment is in rep 5.$/,
  );
});

test('what was done is said in place of a model that doubts it', () => {
  const prescription = of('Holding');
  const heldOn = '2026-11-21';
  const at = (maxHoldSeconds: number) => predictSession(layOut(prescription), { maxHoldSeconds });
  expect(at(20).failsAt).toBeDefined();
  expect(outlookWords(at(20), prescription, undefined, { heldOn })).toBe(
    'You held as much as this on Saturday 21 November. Let down when form goes.',
  );
  expect(outlookWords(at(20), prescription, german, { heldOn })).toBe(
    'So viel wie heute hast du am Samstag, 21. November gehalten. Setz ab, wenn die Form nachlässt.',
  );
  expect(outlookWords(at(600), prescription, undefined, { heldOn, limit: { block: 0, set: 0, rep: 3 } })).toMatch(
    /^You held/,
  );
  expect(outlookWords(at(600), prescription, undefined, { heldOn })).toMatch(/^You should hold all/);
});
