import { createSession, layOut } from '@larkhold/engine';
import { expect, test } from 'vitest';
import { trialPrescription } from './trial-environment.ts';
import { blockLines, waitingView } from './waiting-view.ts';

test('it shows the same place and time as a session that has not begun', () => {
  const prescription = trialPrescription({ sets: 3, reps: 4 });
  const session = createSession({
    timeline: layOut(prescription),
    program: 'P',
    startedAt: '2026-11-25T06:30:00+01:00',
    newId: () => 'id',
  });
  expect(waitingView(prescription).progress).toEqual(session.view().progress);
});

// The words are the product's own: no outside source.
test('blocks read as sets of reps times the hold', () => {
  expect(blockLines(trialPrescription({ sets: 3, reps: 10, holdMs: 30_000 }))).toEqual([
    'Steady holds: 3\u00a0sets of 10 × 30\u00a0s',
  ]);
  expect(blockLines(trialPrescription({ sets: 1, reps: 6, holdMs: 2_500 }))).toEqual(['Steady holds: 6 × 2.5\u00a0s']);
});
