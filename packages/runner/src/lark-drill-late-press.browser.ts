import type { RepRecord } from '@larkhold/engine';
import { expect, it } from 'vitest';
import { browserEnvironment } from './browser-environment.ts';
import './lark-drill.ts';
import type { RunnerEnvironment } from './runner-environment.ts';
import { heard, trialDrill } from './trial-drill.ts';
import { trialEnvironment } from './trial-environment.ts';

/** The browser's own clock and stamps, which a test can set forward. */
function realClock() {
  const real = browserEnvironment();
  let aheadMs = 0;
  const environment: RunnerEnvironment = {
    ...real,
    nowMs: () => real.nowMs() + aheadMs,
    pressedAtMs: (stampMs) => (real.pressedAtMs?.(stampMs) ?? 0) + aheadMs,
    // The clock is set forward by hand, so that a wait would be far too long.
    requestFrame: (fn) => real.requestFrame(fn),
    createCues: trialEnvironment().createCues,
  };
  const frame = () => new Promise(requestAnimationFrame);
  return {
    environment,
    async forward(ms: number) {
      for (let leftMs = ms; leftMs > 0; leftMs -= 4000) {
        aheadMs += Math.min(4000, leftMs);
        await frame();
        await frame();
      }
    },
  };
}

it('a key that was pressed before the page hung for half a second is logged as of its press', async () => {
  const { environment, forward } = realClock();
  const { drill } = await trialDrill({ environment });
  const reps = heard<{ rep: RepRecord }>(drill, 'lark-rep');
  const beforeMs = environment.nowMs();
  drill.begin();
  const afterMs = environment.nowMs();
  await forward(17_000);
  expect(drill.view?.step?.kind).toBe('hold');
  const press = new KeyboardEvent('keydown', { code: 'Space', bubbles: true, cancelable: true });
  const pressedMs = (environment.pressedAtMs?.(press.timeStamp) ?? 0) - 13_000;
  for (const untilMs = performance.now() + 500; performance.now() < untilMs; );
  window.dispatchEvent(press);
  expect(reps).toHaveLength(1);
  expect(reps[0]?.rep.outcome).toBe('short');
  // The drill began between the two looks at the clock; parts of a millisecond are dropped.
  expect(reps[0]?.rep.heldMs).toBeLessThanOrEqual(pressedMs - beforeMs);
  expect(reps[0]?.rep.heldMs).toBeGreaterThan(pressedMs - afterMs - 1);
});
