import { layOut, predictSession } from '@larkhold/engine';
import { bench, describe } from 'vitest';
import { holdsHour, powerHour } from './hours.ts';
import { bestMs } from './quiet-ms.ts';

/** How long an hour takes to predict. Run with `npm run bench:engine`; it prints the best time and its ratio to the bar. */
const BAR_MS = 5;

const holds = layOut(holdsHour);
const power = layOut(powerHour);

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
