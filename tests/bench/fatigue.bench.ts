import { layOut, type PrescribedBlock, predictSession } from '@larkhold/engine';
import { bench, describe } from 'vitest';
import { bestMs } from './quiet-ms.ts';

/** How long an hour takes to predict. Run with `npm run bench:engine`; it prints the best time and its ratio to the bar. */
const BAR_MS = 5;

function timelineOf(change: Partial<PrescribedBlock>) {
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
  return layOut({
    programTitle: 'Hour',
    date: '2026-11-25',
    blocks: [block],
    reasons: [],
    cautions: [],
    durationMs: 0,
  });
}

const holds = timelineOf({});
const power = timelineOf({ sets: 10, reps: 60, drawMs: 1500, holdMs: 3000, letDownMs: 1500, restMs: 0 });

for (const timeline of [holds, power]) {
  const minutes = timeline.durationMs / 60_000;
  if (minutes < 59 || minutes > 65) throw new Error(`the timeline lasts ${minutes} minutes`);
}

for (const [name, timeline, maxHoldSeconds] of [
  ['38 holds of 30 s', holds, 120],
  ['600 power reps of 3 s', power, 600],
] as const) {
  const tookMs = bestMs(() => predictSession(timeline, { maxHoldSeconds }), 200);
  console.log(
    `predictSession, an hour of ${name}: ${tookMs.toFixed(2)} ms, ${(tookMs / BAR_MS).toFixed(2)} of the ${BAR_MS} ms promised`,
  );
}

describe('an hour, predicted', () => {
  bench('38 holds of 30 s', () => void predictSession(holds, { maxHoldSeconds: 120 }));
  bench('600 power reps of 3 s', () => void predictSession(power, { maxHoldSeconds: 600 }));
});
