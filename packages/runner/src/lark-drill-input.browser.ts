import axe from 'axe-core';
import { expect, test } from 'vitest';
import './index.ts';
import type { PressSource } from './press-source.ts';
import { defaultRunnerSettings } from './runner-settings.ts';
import { press, trialDrill } from './trial-drill.ts';
import { trialPrescription } from './trial-environment.ts';

// Times follow from the prescription of the trial: ready 10 s, draw 3, hold 10, let down 3, rest 20.
const HOLD_AT_MS = 13_000;

function trialSource() {
  const source = {
    listeners: new Set<(code: string) => void>(),
    tell: (_message: string | undefined): void => undefined,
    press(code: string) {
      for (const listen of source.listeners) listen(code);
    },
    listen(onPress: (code: string) => void, onTrouble: (message: string | undefined) => void) {
      source.listeners.add(onPress);
      source.tell = onTrouble;
      return () => void source.listeners.delete(onPress);
    },
  } satisfies PressSource & Record<string, unknown>;
  return source;
}

test('a pedal that bounces presses once, though the second press would mean another thing by then', async () => {
  const { drill, environment } = await trialDrill();
  drill.begin();
  environment.pass(HOLD_AT_MS + 4_000);
  press('Space');
  environment.pass(100);
  press('Space');
  expect(drill.view).toMatchObject({ state: 'running', step: { kind: 'letDown' } });
});

test('a touch on the bow lets down from a hold, and does nothing in a rest', async () => {
  const { drill, environment } = await trialDrill();
  drill.begin();
  environment.pass(HOLD_AT_MS + 4_000);
  await drill.updateComplete;
  const glance = drill.renderRoot.querySelector('lark-glance')!;
  glance.dispatchEvent(new PointerEvent('pointerdown', { bubbles: true }));
  expect(drill.view?.lastRep).toMatchObject({ outcome: 'short', heldMs: 4_000 });
  environment.pass(5_000);
  glance.dispatchEvent(new PointerEvent('pointerdown', { bubbles: true }));
  expect(drill.view).toMatchObject({ state: 'running', step: { kind: 'rest' } });
});

test('gamepads and claps do what the archer has set them to, until the drill is over', async () => {
  const source = trialSource();
  const keys = {
    ...defaultRunnerSettings.keys,
    begin: ['Clap'],
    letDownNow: ['Gamepad:1'],
    stop: ['Gamepad:9'],
  };
  const { drill, environment } = await trialDrill({
    sources: [source],
    settings: { ...defaultRunnerSettings, keys },
  });
  source.press('Clap');
  expect(drill.view?.state).toBe('running');
  environment.pass(HOLD_AT_MS + 3_000);
  source.press('Gamepad:3');
  expect(drill.view?.step?.kind).toBe('hold');
  source.press('Gamepad:1');
  expect(drill.view?.lastRep).toMatchObject({ outcome: 'short', heldMs: 3_000 });
  source.press('Gamepad:9');
  environment.pass(500);
  source.press('Gamepad:9');
  expect(drill.view?.state).toBe('stopped');
  expect(source.listeners.size).toBe(0);
});

test('the display says when a gamepad is pulled out in mid-hold, and the hold goes on', async () => {
  const source = trialSource();
  const { drill, environment } = await trialDrill({ sources: [source] });
  const notice = async () => {
    await drill.updateComplete;
    const glance = drill.renderRoot.querySelector('lark-glance')!;
    await glance.updateComplete;
    return glance.renderRoot.querySelector('.notice')?.textContent ?? '';
  };
  const told: string[] = [];
  drill.addEventListener('lark-notice', (event) =>
    told.push((event as CustomEvent<{ message: string }>).detail.message),
  );
  drill.begin();
  environment.pass(HOLD_AT_MS + 2_000);
  source.tell('The gamepad is gone.');
  expect(await notice()).toBe('The gamepad is gone.');
  expect(told).toEqual(['The gamepad is gone.']);
  environment.pass(8_100);
  expect(drill.view).toMatchObject({ state: 'running', lastRep: { outcome: 'held', heldMs: 10_000 } });
  source.tell(undefined);
  expect(await notice()).toBe('');
});

test('a removed drill hears nothing more', async () => {
  const source = trialSource();
  const { drill } = await trialDrill({ sources: [source] });
  expect(source.listeners.size).toBe(1);
  drill.remove();
  expect(source.listeners.size).toBe(0);
});

test('before it begins it shows the bow at rest, the numbers of the day and one button', async () => {
  const { drill } = await trialDrill({
    prescription: { ...trialPrescription(), warmUp: ['Ten arm circles'] },
  });
  const text = drill.renderRoot.textContent?.replace(/\s+/g, ' ') ?? '';
  expect(text).toContain('Steady holds: 2 sets of 2 × 10 s');
  expect(text).toContain('Warm up first: Ten arm circles.');
  const buttons = [...drill.renderRoot.querySelectorAll('button')];
  expect(buttons.map((button) => button.textContent?.trim())).toEqual(['Begin']);
  expect(buttons[0]!.getBoundingClientRect().height).toBeGreaterThanOrEqual(64);
  expect((await axe.run(drill, { resultTypes: ['violations'] })).violations).toEqual([]);
  buttons[0]!.click();
  expect(drill.view?.state).toBe('running');
});

test('a number too small for the distance is pointed out before the drill, and not while the bow is drawn', async () => {
  const { drill, environment } = await trialDrill({
    settings: { ...defaultRunnerSettings, viewing: { distanceM: 10, mirrorToScreenM: 10 } },
  });
  const notice = async () => {
    await new Promise((resolve) => setTimeout(resolve, 50));
    await drill.updateComplete;
    const glance = drill.renderRoot.querySelector('lark-glance')!;
    await glance.updateComplete;
    return glance.renderRoot.querySelector('.notice')?.textContent ?? '';
  };
  expect(await notice()).toContain('too small for 20\u00a0m');
  drill.begin();
  environment.pass(HOLD_AT_MS + 1_000);
  expect(await notice()).toBe('');
});

test('flipped turns the display over and leaves the buttons as they are', async () => {
  const { drill, environment } = await trialDrill({ settings: { ...defaultRunnerSettings, flipped: true } });
  drill.begin();
  environment.pass(HOLD_AT_MS + 1_000);
  await drill.updateComplete;
  const glance = drill.renderRoot.querySelector('lark-glance')!;
  await glance.updateComplete;
  const face = glance.renderRoot.querySelector('.face')!;
  expect(getComputedStyle(face).transform).toBe('matrix(-1, 0, 0, 1, 0, 0)');
  expect(getComputedStyle(drill.renderRoot.querySelector('.buttons')!).transform).toBe('none');
});
