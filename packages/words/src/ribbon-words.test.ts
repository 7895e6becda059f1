import { expect, test } from 'vitest';
import { ribbonRepWords, ribbonWords } from './ribbon-words.ts';

const rep = { prescribedMs: 30_000, heldMs: 30_000, outcome: 'held' } as const;
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

test('a ribbon says how many reps went how, and each that did not go as asked', () => {
  const reps = [
    rep,
    { ...rep, heldMs: 12_000, outcome: 'short', why: 'tired' } as const,
    { ...rep, outcome: 'skipped' } as const,
  ];
  expect(plain(ribbonWords(reps))).toBe(
    '3 reps: 1 held, 1 short, 1 skipped. Rep 2: 12 s of 30 s, tired. Rep 3: skipped.',
  );
});

test('a drill under way says what is now and what is to come', () => {
  const reps = [rep, { ...rep, outcome: 'now' } as const, { ...rep, outcome: 'coming' } as const];
  expect(plain(ribbonWords(reps))).toBe('3 reps: 1 held, 1 under way, 1 to come.');
  expect(plain(ribbonRepWords(reps[2]!, 2))).toBe('Rep 3: still to come, 30 s');
});

test('six hundred doubtful reps are counted, not listed', () => {
  const reps = Array.from({ length: 600 }, () => ({ ...rep, heldMs: 1000, outcome: 'short' }) as const);
  expect(ribbonWords(reps)).toMatch(/^600\sreps: 600 short\..* And 592 more\.$/);
});
