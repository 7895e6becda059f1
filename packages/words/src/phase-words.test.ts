import type { SessionView } from '@larkhold/engine';
import { expect, test } from 'vitest';
import { nextWords, phaseWord } from './phase-words.ts';

const step = { startMs: 0, durationMs: 30_000, block: 0, set: 1, rep: 3, hand: 'usual' } as const;
const view: SessionView = {
  state: 'running',
  step: { ...step, kind: 'hold' },
  next: { ...step, kind: 'letDown', durationMs: 3_000 },
  msLeft: 12_001,
  stepMs: 30_000,
  offsetMs: 0,
  progress: { repsDone: 13, repsTotal: 30, set: 1, sets: 3, rep: 3, reps: 10, block: 0, blocks: 1, msLeft: 725_000 },
};

// The words are the product's own vocabulary: no outside source.
test.each([
  ['ready', 'Get ready'],
  ['draw', 'Draw'],
  ['hold', 'Hold'],
  ['letDown', 'Let down'],
  ['rest', 'Rest'],
  ['setRest', 'Rest'],
] as const)('%s reads %s', (kind, word) => {
  expect(phaseWord({ ...view, step: { ...step, kind } })).toBe(word);
});

test('paused and ended go before the step', () => {
  expect(phaseWord({ ...view, state: 'paused' })).toBe('Paused');
  expect(phaseWord({ ...view, state: 'done' })).toBe('Done');
  expect(phaseWord({ ...view, state: 'stopped' })).toBe('Stopped');
});

test('what comes next is said with its hand and its length', () => {
  expect(nextWords(view)).toBe('Next: let down');
  expect(nextWords({ ...view, next: { ...step, kind: 'hold' } })).toBe('Next: hold 30\u00a0s');
  expect(nextWords({ ...view, next: { ...step, kind: 'draw', hand: 'opposite' } })).toBe('Next: draw, opposite hand');
  expect(nextWords({ ...view, next: undefined })).toBe('Last one');
});
