import { layOut, type PrescribedBlock, predictSession } from '@larkhold/engine';
import { bench, describe } from 'vitest';

/** Run with `npx vitest bench --run tests/bench/fatigue.bench.ts --project unit`. The bar: under 5 ms for 60 minutes. */

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

describe('an hour, predicted', () => {
  bench('38 holds of 30 s', () => void predictSession(holds, { maxHoldSeconds: 120 }));
  bench('600 power reps of 3 s', () => void predictSession(power, { maxHoldSeconds: 600 }));
});
