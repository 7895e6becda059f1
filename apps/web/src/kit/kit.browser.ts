import { openStore } from '@larkhold/store';
import axe from 'axe-core';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { type AppState, createAppState } from '../shell/app-state.ts';
import '@larkhold/ui/tokens.css';
import './lark-kit-controls.ts';
import './lark-kit-display.ts';

let state: AppState;
let names = 0;

beforeEach(async () => {
  names += 1;
  state = createAppState({
    store: await openStore({ name: `kit-${names}-${performance.now()}` }),
    today: () => '2026-11-25',
    instant: () => '2026-11-25T06:00:00Z',
    newId: () => '00000000-0000-4000-8000-000000000001',
    saveFile: () => undefined,
    trySound: () => undefined,
    askForPersistence: async () => 'unknown',
  });
});

afterEach(() => {
  document.body.replaceChildren();
  vi.restoreAllMocks();
});

async function show<Tag extends 'lark-kit-display' | 'lark-kit-controls'>(tag: Tag) {
  const element = document.createElement(tag);
  document.body.append(element);
  state.subscribe((app) => {
    element.app = app;
  });
  await state.reload();
  await element.updateComplete;
  const root = element.renderRoot as ShadowRoot;
  const tick = (words: string) =>
    [...root.querySelectorAll('label')].find((label) => label.textContent?.includes(words))?.querySelector('input');
  return { element, root, tick };
}

const kit = () => state.app!.view.kit;

test('distance and mirror: the whole way counts, and a number that cannot be read there is reported', async () => {
  const { root, tick } = await show('lark-kit-display');
  const warning = () => root.querySelector('.warning')?.textContent ?? '';
  await state.app!.act.changeKit({ pixelMm: 0.2, viewing: { ...kit().viewing, distanceM: 0.5 } });
  await expect.poll(() => root.querySelector('.legible')?.textContent).toContain('3 mm');
  expect(warning()).toBe('');
  tick('in a mirror')!.click();
  await expect.poll(() => kit().viewing).toMatchObject({ byMirror: true, flipped: true });
  const way = tick('From the mirror to the screen')!;
  way.value = '6';
  way.dispatchEvent(new Event('change'));
  await expect.poll(() => kit().viewing.mirrorToScreenM).toBe(6);
  // ISO 9241-3, 20 minutes of arc: 5.818 thousandths of 6.5 m are 37.8 mm.
  await expect.poll(() => root.querySelector('.legible')?.textContent).toContain('38 mm');
  await state.app!.act.changeKit({ viewing: { ...kit().viewing, mirrorToScreenM: 20 } });
  await expect.poll(warning).toContain('too small for 20.5\u00a0m');
  expect(warning()).toContain('by the mirror');
});

test('a bank card measures the screen, and the measure can be taken back', async () => {
  const { root, tick } = await show('lark-kit-display');
  tick('whole screen')!.click();
  await expect.poll(() => kit().fullScreen).toBe(true);
  const card = root.querySelector('lark-card-size')!;
  await card.updateComplete;
  const bar = card.renderRoot.querySelector('input')!;
  bar.value = '300';
  bar.dispatchEvent(new Event('input'));
  card.renderRoot.querySelector('button')!.click();
  // ISO/IEC 7810, ID-1: the short side is 53.98 mm; over 300 px that is 0.1799 mm.
  await expect.poll(() => kit().pixelMm).toBeCloseTo(0.1799, 4);
  await expect.poll(() => card.isMeasured).toBe(true);
  await card.updateComplete;
  [...card.renderRoot.querySelectorAll('button')].at(-1)!.click();
  await expect.poll(() => kit().pixelMm).toBeUndefined();
});

test('controls are learned, tried, shared out and set back; the microphone is off until it is asked for', async () => {
  const ask = vi
    .spyOn(navigator.mediaDevices, 'getUserMedia')
    .mockRejectedValue(new DOMException('no', 'NotAllowedError'));
  const { element, root, tick } = await show('lark-kit-controls');
  expect(root.textContent?.replace(/\s+/g, ' ')).toContain('processed on this device only and never stored');
  expect(tick('Claps')!.checked).toBe(false);
  const learnOf = (label: string) => [...root.querySelectorAll('lark-learn')].find((one) => one.label === label)!;
  const press = async (label: string, words: string) => {
    const learn = learnOf(label);
    await learn.updateComplete;
    [...learn.renderRoot.querySelectorAll('button')].find((button) => button.textContent?.trim() === words)!.click();
    await learn.updateComplete;
    return () => learn.renderRoot.querySelector('[role=status]')?.textContent?.trim();
  };
  await press('Stop', 'Learn');
  window.dispatchEvent(new KeyboardEvent('keydown', { code: 'KeyQ', cancelable: true }));
  await expect.poll(() => kit().keys.stop).toEqual(['KeyQ']);
  await press('Stop', 'Done');
  const heard = await press('Stop', 'Try');
  window.dispatchEvent(new KeyboardEvent('keydown', { code: 'KeyW', cancelable: true }));
  await expect.poll(heard).toBe('Heard: Key W. Not set for this.');
  await press('Stop', 'Done');
  expect(ask).not.toHaveBeenCalled();
  tick('Claps')!.click();
  await expect.poll(() => kit().listens.microphone).toBe(true);
  await element.updateComplete;
  expect(ask).not.toHaveBeenCalled();
  const told = await press('Let down now', 'Learn');
  await expect.poll(told).toContain('The microphone is not allowed or not there.');
  expect(ask).toHaveBeenCalledOnce();
  [...root.querySelectorAll('button')].find((button) => button.textContent?.includes('Set the keys back'))!.click();
  await expect.poll(() => kit().keys).toMatchObject({ stop: [], skipRep: ['ArrowRight', 'KeyN'] });
});

test('a pedal that is learned says what else it does, and does only this when asked', async () => {
  const { root } = await show('lark-kit-controls');
  const learn = [...root.querySelectorAll('lark-learn')].find((one) => one.label === 'Stop')!;
  await learn.updateComplete;
  [...learn.renderRoot.querySelectorAll('button')].find((one) => one.textContent?.trim() === 'Learn')!.click();
  window.dispatchEvent(new KeyboardEvent('keydown', { code: 'PageDown', cancelable: true }));
  await expect
    .poll(() => root.querySelector('.notice p')?.textContent)
    .toBe('Page down also does: Begin, Pause or resume.');
  root.querySelector<HTMLButtonElement>('.notice button')!.click();
  await expect.poll(() => kit().keys.begin).not.toContain('PageDown');
  expect(kit().keys.pause).not.toContain('PageDown');
  expect(kit().keys.stop).toContain('PageDown');
  // What Page Down did not share is as it was.
  expect(kit().keys.begin).toContain('Space');
  await expect.poll(() => root.querySelector('.notice')).toBeNull();
});

test.each(['dark', 'light', 'contrast'] as const)('axe finds nothing, theme %s', async (theme) => {
  document.documentElement.dataset.theme = theme;
  await show('lark-kit-display');
  await state.app!.act.changeKit({ theme, viewing: { ...kit().viewing, byMirror: true, mirrorToScreenM: 20 } });
  const { element } = await show('lark-kit-controls');
  await element.updateComplete;
  const { violations } = await axe.run(document.body, {
    resultTypes: ['violations'],
    rules: { region: { enabled: false } },
  });
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([]);
});
