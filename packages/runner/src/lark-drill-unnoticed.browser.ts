import type { RepRecord } from '@larkhold/engine';
import { afterEach, expect, test } from 'vitest';
import './index.ts';
import { defaultRunnerSettings } from './runner-settings.ts';
import { glanceText, heard, press, trialDrill } from './trial-drill.ts';
import { trialPrescription } from './trial-environment.ts';

// Times follow from the prescription of the trial: ready 10 s, draw 3, hold 10, let down 3, rest 20.
const HOLD_AT_MS = 13_000;

afterEach(() => document.body.replaceChildren());

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

test('a page that stood still in the middle of a long hold credits nothing that nobody heard', async () => {
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

test('a hold that can be neither seen nor heard is not credited: the drill stops there and says so', async () => {
  const { drill, environment } = await trialDrill();
  const notices = heard<{ message: string }>(drill, 'lark-notice');
  drill.begin();
  environment.pass(HOLD_AT_MS + 4_000);
  environment.trouble(NO_SOUND);
  environment.setSeen(false);
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
