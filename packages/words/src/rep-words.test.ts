import type { DrillRecord, RepRecord } from '@larkhold/engine';
import { expect, test } from 'vitest';
import { drillWords, placeOfRep, repWords } from './rep-words.ts';

const rep: RepRecord = {
  block: 0,
  set: 0,
  rep: 2,
  hand: 'usual',
  prescribedMs: 30_000,
  heldMs: 28_000,
  outcome: 'short',
};
const record: DrillRecord = {
  ...{ id: 'a', program: 'Attic mornings', date: '2026-11-25' },
  ...{ startedAt: '2026-11-25T06:00:00+00:00', endedAt: '2026-11-25T06:10:00+00:00' },
  reps: [{ ...rep, rep: 1, heldMs: 30_000, outcome: 'held' }, rep],
  prescribedReps: 5,
};
const plain = (text: string | undefined) => text?.replaceAll('\u00a0', ' ');

test('an early let-down says how early and what was logged', () => {
  expect(plain(repWords(rep))).toBe('Let down 2 s early: logged as 28 s.');
  expect(repWords({ ...rep, outcome: 'held' })).toBeUndefined();
});

test('a drill says how many reps were held, and how long', () => {
  expect(plain(drillWords(record))).toBe('1 of 5 reps held. 58 s at full draw.');
});

test('a rep is placed by what there is more than one of', () => {
  expect(placeOfRep(rep, record)).toBe('Rep 3');
  expect(placeOfRep({ ...rep, set: 1 }, { ...record, reps: [rep, { ...rep, set: 1 }] })).toBe('Set 2, rep 3');
  expect(placeOfRep({ ...rep, hand: 'opposite' }, record)).toBe('Rep 3, other hand');
});
