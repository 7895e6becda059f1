import type { DrillRecord } from '@larkhold/engine';
import { expect, test } from 'vitest';
import { browserEnvironment } from './browser-environment.ts';
import { callHidden } from './hidden-timer.ts';
import './index.ts';
import { trialEnvironment, trialPrescription } from './trial-environment.ts';

const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** The engine's ready time goes before. */
const READY_MS = 10_000;

test('a short drill on the real clock leaves a closed record, held to the millisecond, let down as it was pressed', async () => {
  const drill = document.createElement('lark-drill');
  const { armed: _armed, createCues } = trialEnvironment();
  drill.environment = { ...browserEnvironment(), createCues };
  drill.prescription = trialPrescription({
    sets: 1,
    reps: 2,
    drawMs: 500,
    holdMs: 1_000,
    letDownMs: 500,
    restMs: 500,
  });
  drill.programTitle = 'Morning holds';
  drill.keysFrom = 'page';
  document.body.append(drill);
  const ended = new Promise<DrillRecord>((resolve) => {
    drill.addEventListener('lark-end', (event) => {
      if (event instanceof CustomEvent) resolve(event.detail.record);
    });
  });
  drill.begin();
  const beganMs = performance.now();
  // In the second hold: 10 s, a rep of 2 s, 0.5 s of rest, 0.5 s of draw, and 0.4 s held.
  await wait(READY_MS + 3_400 - (performance.now() - beganMs));
  const pressedMs = performance.now() - beganMs;
  window.dispatchEvent(new KeyboardEvent('keydown', { code: 'Space', cancelable: true, bubbles: true }));
  const record = await ended;
  expect(record.open).toBeUndefined();
  expect(record.reps[0]).toMatchObject({ outcome: 'held', heldMs: 1_000 });
  expect(record.reps[1]).toMatchObject({ outcome: 'short' });
  expect(Math.abs(record.reps[1]!.heldMs - (pressedMs - READY_MS - 3_000))).toBeLessThan(50);
}, 30_000);

test('a hidden page is called by its Worker, in order and not too soon, and what is taken back is not called', async () => {
  const heard: string[] = [];
  const beganMs = performance.now();
  let firstAtMs = 0;
  callHidden(60, () => {
    firstAtMs = performance.now() - beganMs;
    heard.push('first');
  });
  callHidden(160, () => heard.push('second'));
  callHidden(90, () => heard.push('never'))();
  await wait(500);
  expect(heard).toEqual(['first', 'second']);
  expect(firstAtMs).toBeGreaterThanOrEqual(55);
});
