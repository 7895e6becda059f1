import { createSession, layOut, type Prescription, timelineDurationMs } from '@larkhold/engine';
import { bench, describe } from 'vitest';
import { holdsHour, powerHour } from './hours.ts';

/** Run with `npx vitest bench --run tests/bench/session.bench.ts --project unit`. */

const start = { program: 'Hour', startedAt: '2026-11-25T06:30:00Z', newId: () => 'a' };

function walkedHour(prescription: Prescription, tickMs: number) {
  const session = createSession({ timeline: layOut(prescription), ...start });
  session.send({ type: 'begin' }, 0);
  for (let atMs = tickMs; atMs <= 3_700_000; atMs += tickMs) session.advance(atMs);
  if (session.view().state !== 'done') throw new Error('the hour is not over');
  return session;
}

describe('an hour, walked', () => {
  bench('38 holds of 30 s, a tick every 100 ms', () => void walkedHour(holdsHour, 100));
  bench('38 holds of 30 s, a tick every second', () => void walkedHour(holdsHour, 1000));
  bench('600 power reps of 3 s, a tick every 100 ms', () => void walkedHour(powerHour, 100));
});

describe('once or often', () => {
  const half = createSession({ timeline: layOut(powerHour), ...start });
  half.send({ type: 'begin' }, 0);
  for (let atMs = 0; atMs <= 1_800_000; atMs += 1000) half.advance(atMs);
  bench('a view in the middle of 600 reps', () => void half.view());
  bench('a snapshot in the middle of 600 reps', () => void half.snapshot());
  bench('600 reps laid out', () => void layOut(powerHour));
  bench('their length only', () => void timelineDurationMs(powerHour.blocks));
});
