import { builtInPrograms, type DayEntry, type PrescribeInput, prescribe } from '@larkhold/engine';
import { expect, test } from 'vitest';
import { readinessWords } from './readiness-words.ts';

const holding = builtInPrograms.find(({ title }) => title === 'Holding')!;
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const wordsFor = (readiness: DayEntry['readiness'], more: Partial<PrescribeInput> = {}) =>
  readinessWords(readiness, prescribe({ program: holding, records: [], today: '2026-11-25', readiness, ...more }));

test('nothing said, nothing shown; fresh and as usual change nothing and say so', () => {
  expect(wordsFor(undefined)).toBe('');
  expect(wordsFor('as usual')).toContain('nothing changes');
  expect(wordsFor('fresh')).toContain('nothing changes');
});

test('heavy says what was reduced and why', () => {
  // docs/prescription.md: "heavy" keeps 0.7 of the reps; 10 reps become 7.
  expect(plain(wordsFor('heavy'))).toBe('Full-draw holds: 7 reps instead of 10, because you said today is heavy.');
});

test('heavy beside a deeper cut says that the deeper cut counts alone', () => {
  // docs/prescription.md: the last week before a competition keeps half of the reps, "heavy" 0.7.
  const words = wordsFor('heavy', { competitionDay: '2026-11-29' });
  expect(plain(words)).toContain('Cuts are not added up');
  expect(plain(words)).toContain('5 reps instead of 10, because the competition is on 29 November');
});
