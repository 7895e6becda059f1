import type { RepRecord } from '@larkhold/engine';
import { expect, test } from 'vitest';
import './index.ts';
import { defaultRunnerSettings } from './runner-settings.ts';
import { glanceText, heard, press, trialDrill } from './trial-drill.ts';
import { trialEnvironment, trialPrescription } from './trial-environment.ts';

// Times follow from the prescription of the trial: ready 10 s, draw 3, hold 10, let down 3, rest 20.
const HOLD_AT_MS = 13_000;

test('lost time pauses, marks the rep unsure and says so', async () => {
  const { drill, environment } = await trialDrill();
  const notices = heard<{ message: string }>(drill, 'lark-notice');
  drill.begin();
  environment.pass(HOLD_AT_MS + 1_000);
  environment.sleep(60_000);
  environment.pass(50);
  expect(drill.view).toMatchObject({ state: 'paused', pausedBy: 'gap', lastRep: { outcome: 'unsure' } });
  expect(notices.at(-1)?.message).toContain('Time was lost');
  expect(await glanceText(drill, '.notice')).toContain('Press Resume');
  press('KeyP');
  expect(drill.view?.state).toBe('running');
  expect(await glanceText(drill, '.notice')).toBe('');
});

test('a page that hung in the middle of a long hold credits nothing that nobody heard', async () => {
  const { drill, environment } = await trialDrill({ prescription: trialPrescription({ holdMs: 60_000 }) });
  drill.begin();
  environment.pass(HOLD_AT_MS + 4_000);
  environment.sleep(20_000);
  environment.pass(50);
  expect(drill.view).toMatchObject({ state: 'paused', pausedBy: 'gap' });
  expect(drill.view?.lastRep).toMatchObject({ outcome: 'unsure', heldMs: 4_000 });
});

test('a page that is only busy for four seconds goes on', async () => {
  const { drill, environment } = await trialDrill({ prescription: trialPrescription({ holdMs: 60_000 }) });
  drill.begin();
  environment.pass(HOLD_AT_MS + 4_000);
  environment.sleep(4_000);
  environment.pass(50);
  expect(drill.view).toMatchObject({ state: 'running', step: { kind: 'hold' } });
});

const NO_SOUND = { kind: 'none', message: 'This device has no sound. Follow the screen.' } as const;

/** A drill in the midst of a hold, hidden from now on, and with no sound. */
async function hiddenInHold() {
  const { drill, environment } = await trialDrill();
  const notices = heard<{ message: string }>(drill, 'lark-notice');
  drill.begin();
  environment.pass(HOLD_AT_MS + 4_000);
  environment.trouble(NO_SOUND);
  environment.setSeen(false);
  return { drill, environment, notices };
}

test('a hold that can be neither seen nor heard is not credited: the drill stops there and says so', async () => {
  const { drill, environment, notices } = await hiddenInHold();
  environment.pass(2_000);
  expect(drill.view).toMatchObject({ state: 'paused', pausedBy: 'gap' });
  expect(environment.armed.at(-1)).toBe('disarm');
  expect(notices.at(-1)?.message).toBe(
    'The page was hidden and could not be heard. A rep that was running is marked unsure. Press Resume to go on.',
  );
  press('KeyP');
  environment.setSeen(true);
  environment.trouble(undefined);
  await drill.updateComplete;
  expect(await glanceText(drill, '.notice')).toBe('');
  expect(await glanceText(drill, '.place')).toBe('Set 1 of 2 · rep 2 of 2');
});

test('a hidden drill that nobody hears says so too where its look comes late', async () => {
  const { drill, environment, notices } = await hiddenInHold();
  environment.sleep(1_500);
  environment.pass(50);
  expect(drill.view).toMatchObject({ state: 'paused', pausedBy: 'gap' });
  expect(notices.at(-1)?.message).toContain('The page was hidden and could not be heard.');
});

test('a rest that can be neither seen nor heard goes on, but no draw begins after it', async () => {
  const { drill, environment } = await trialDrill();
  const reps = heard<{ rep: RepRecord }>(drill, 'lark-rep');
  drill.begin();
  environment.pass(HOLD_AT_MS + 10_000 + 3_000 + 1_000);
  environment.trouble(NO_SOUND);
  environment.setSeen(false);
  environment.pass(13_000);
  expect(drill.view).toMatchObject({ state: 'running', step: { kind: 'rest' } });
  environment.pass(3_000);
  expect(drill.view).toMatchObject({ state: 'paused', pausedBy: 'gap', step: { kind: 'rest' } });
  expect(reps.map(({ rep }) => rep.outcome)).toEqual(['held']);
});

test.each([
  ['heard but hidden', undefined, false, 0.7, 'running'],
  ['seen but silent', NO_SOUND, true, 0.7, 'running'],
  ['hidden, with tones in place of words', { kind: 'wordless', message: 'Tones.' }, false, 0.7, 'running'],
  ['hidden, and silent by choice', undefined, false, 0, 'paused'],
] as const)('a drill that is %s', async (_what, trouble, isSeen, soundLevel, state) => {
  const settings = { ...defaultRunnerSettings, soundLevel };
  const { drill, environment } = await trialDrill({ settings });
  drill.begin();
  environment.pass(HOLD_AT_MS + 2_000);
  environment.trouble(trouble);
  environment.setSeen(isSeen);
  environment.pass(4_000);
  expect(drill.view?.state).toBe(state);
});

test('a glance at another tab, sound off, costs nothing', async () => {
  const { drill, environment } = await trialDrill({ settings: { ...defaultRunnerSettings, soundLevel: 0 } });
  drill.begin();
  environment.pass(HOLD_AT_MS + 2_000);
  environment.setSeen(false);
  environment.pass(700);
  environment.setSeen(true);
  environment.pass(700);
  environment.setSeen(false);
  environment.pass(700);
  expect(drill.view?.state).toBe('running');
});

test('a machine that slept with its page clock standing still is a gap, and what was held until then is known', async () => {
  const { drill, environment } = await trialDrill();
  const reps = heard<{ rep: RepRecord }>(drill, 'lark-rep');
  drill.begin();
  environment.pass(HOLD_AT_MS + 4_000);
  environment.setWall(8 * 3_600_000);
  environment.pass(100);
  expect(drill.view).toMatchObject({ state: 'paused', pausedBy: 'gap' });
  environment.pass(10_000);
  expect(reps.map(({ rep }) => rep.outcome)).toEqual(['unsure']);
  expect(reps[0]!.rep.heldMs).toBeGreaterThanOrEqual(3_850);
  expect(reps[0]!.rep.heldMs).toBeLessThanOrEqual(4_000);
});

test.each([
  ['set back by a year', -365 * 86_400_000],
  ['set forward by less than the gap limit', 4_900],
] as const)('a wall clock that is %s is nothing to a drill', async (_what, byMs) => {
  const { drill, environment } = await trialDrill();
  const reps = heard<{ rep: RepRecord }>(drill, 'lark-rep');
  drill.begin();
  environment.pass(HOLD_AT_MS + 4_000);
  environment.setWall(byMs);
  environment.pass(8_000);
  expect(reps.map(({ rep }) => [rep.outcome, rep.heldMs])).toEqual([['held', 10_000]]);
});

test.each([
  ['off', 0, ['unsure']],
  ['on', 0.7, ['held']],
] as const)('a page stuck for 4.5 s over a 3 s hold, sound %s', async (_what, soundLevel, outcomes) => {
  const settings = { ...defaultRunnerSettings, soundLevel };
  const { drill, environment } = await trialDrill({ settings, prescription: trialPrescription({ holdMs: 3_000 }) });
  const reps = heard<{ rep: RepRecord }>(drill, 'lark-rep');
  drill.begin();
  environment.pass(HOLD_AT_MS - 500);
  environment.sleep(4_500);
  environment.pass(50);
  expect(reps.map(({ rep }) => rep.outcome)).toEqual(outcomes);
});

test('the screen is let go after ten minutes of pause, and kept on again when the drill goes on', async () => {
  const environment = trialEnvironment();
  let awakeCount = 0;
  environment.keepAwake = () => {
    awakeCount += 1;
    return () => {
      awakeCount -= 1;
    };
  };
  const { drill } = await trialDrill({}, environment);
  drill.begin();
  environment.pass(2_000);
  press('KeyP');
  environment.pass(9 * 60_000);
  expect([drill.view?.state, awakeCount]).toEqual(['paused', 1]);
  environment.pass(61_000);
  expect(awakeCount).toBe(0);
  press('KeyP');
  environment.pass(100);
  expect([drill.view?.state, awakeCount]).toEqual(['running', 1]);
});

test('a rest is drawn once a second, a pause not at all, a bow in movement at every picture', async () => {
  const { drill, environment } = await trialDrill();
  drill.begin();
  let drawn = 0;
  const countDrawn = async (spanMs: number) => {
    drawn = 0;
    for (let passedMs = 0; passedMs < spanMs; passedMs += 50) {
      environment.pass(50);
      if (drill.isUpdatePending) drawn += 1;
      await drill.updateComplete;
    }
    return drawn;
  };
  environment.pass(HOLD_AT_MS - 3_000);
  await drill.updateComplete;
  expect(await countDrawn(3_000)).toBe(60);
  expect(await countDrawn(10_000)).toBeLessThanOrEqual(200);
  expect(await countDrawn(3_000)).toBe(60);
  expect(await countDrawn(10_000)).toBeLessThanOrEqual(11);
  press('KeyP');
  await drill.updateComplete;
  expect(await countDrawn(10_000)).toBe(0);
});
