import { createSession, layOut, type PrescribedBlock, type Prescription, timelineDurationMs } from '@larkhold/engine';
import { bench, describe } from 'vitest';

/** Run with `npx vitest bench --run tests/bench/session.bench.ts --project unit`. */

function today(change: Partial<PrescribedBlock>): Prescription {
  const block: PrescribedBlock = {
    block: 0,
    title: 'Holds',
    drill: 'holding',
    sets: 1,
    reps: 38,
    drawMs: 3000,
    holdMs: 30_000,
    letDownMs: 3000,
    restMs: 60_000,
    setRestMs: 0,
    letDownTo: 'rest',
    hand: 'usual',
    addedWeightLbf: 0,
    ...change,
  };
  return { programTitle: 'Hour', date: '2026-11-25', blocks: [block], reasons: [], cautions: [], durationMs: 0 };
}

const holds = today({});
const power = today({ sets: 10, reps: 60, drawMs: 1500, holdMs: 3000, letDownMs: 1500, restMs: 0 });
const start = { program: 'Hour', startedAt: '2026-11-25T06:30:00Z', newId: () => 'a' };

function walkedHour(prescription: Prescription, tickMs: number) {
  const session = createSession({ timeline: layOut(prescription), ...start });
  session.send({ type: 'begin' }, 0);
  for (let atMs = tickMs; atMs <= 3_700_000; atMs += tickMs) session.advance(atMs);
  if (session.view().state !== 'done') throw new Error('the hour is not over');
  return session;
}

describe('an hour, walked', () => {
  bench('38 holds of 30 s, a tick every 100 ms', () => void walkedHour(holds, 100));
  bench('38 holds of 30 s, a tick every second', () => void walkedHour(holds, 1000));
  bench('600 power reps of 3 s, a tick every 100 ms', () => void walkedHour(power, 100));
});

describe('once or often', () => {
  const half = createSession({ timeline: layOut(power), ...start });
  half.send({ type: 'begin' }, 0);
  for (let atMs = 0; atMs <= 1_800_000; atMs += 1000) half.advance(atMs);
  bench('a view in the middle of 600 reps', () => void half.view());
  bench('a snapshot in the middle of 600 reps', () => void half.snapshot());
  bench('600 reps laid out', () => void layOut(power));
  bench('their length only', () => void timelineDurationMs(power.blocks));
});
