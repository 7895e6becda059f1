import { builtInPrograms, type DayEntry, type PrescribeInput, prescribe } from '@larkhold/engine';
import { expect, test } from 'vitest';
import { readinessWords } from './readiness-words.ts';

const holding = builtInPrograms.find(({ title }) => title === 'Holding')!;
const wordsFor = (readiness: DayEntry['readiness'], more: Partial<PrescribeInput> = {}) =>
  readinessWords(readiness, prescribe({ program: holding, records: [], today: '2026-11-25', readiness, ...more }));

test('nothing said, nothing shown; fresh and as usual change nothing and say so', () => {
  expect(wordsFor(undefined)).toBe('');
  expect(wordsFor('as usual')).toContain('nothing changes');
  expect(wordsFor('fresh')).toContain('nothing changes');
});

test('heavy says what was taken off and why', () => {
  // docs/prescription.md: "heavy" keeps 0.7 of the reps; 10 reps become 7.
  expect(wordsFor('heavy')).toBe('Full-draw holds: 7 reps instead of 10, because you said today is heavy.');
});

test('heavy beside pain says that the deeper cut stands alone', () => {
  const days: DayEntry[] = [{ date: '2026-11-25', pain: true }];
  const words = wordsFor('heavy', { days });
  expect(words).toContain('Cuts are not added up');
  expect(words).toContain('5 reps instead of 10, because there was pain on 25 November');
});
