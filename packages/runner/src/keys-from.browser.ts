import type { DrillRecord } from '@larkhold/engine';
import { expect, test } from 'vitest';
import './index.ts';
import { heard, trialDrill } from './trial-drill.ts';

function pressOn(target: EventTarget, code: string): KeyboardEvent {
  const event = new KeyboardEvent('keydown', { code, bubbles: true, composed: true, cancelable: true });
  target.dispatchEvent(event);
  return event;
}

test('a page keeps its own keys: a drill hears none until it has the focus', async () => {
  const { drill } = await trialDrill({ keysFrom: 'focus' });
  const mine = document.createElement('div');
  document.body.append(mine);
  expect(pressOn(mine, 'Space').defaultPrevented).toBe(false);
  expect(drill.view).toBeUndefined();
  drill.focus();
  expect(document.activeElement).toBe(drill);
  expect(pressOn(drill, 'Space').defaultPrevented).toBe(true);
  expect(drill.view?.state).toBe('running');
});

test('begun by the page, it takes the focus, and the next press is heard', async () => {
  const { drill } = await trialDrill({ keysFrom: 'focus' });
  drill.begin();
  expect(document.activeElement).toBe(drill);
  pressOn(document.activeElement!, 'KeyP');
  expect(drill.view?.state).toBe('paused');
});

test('asked to, it hears every key of the page', async () => {
  const { drill } = await trialDrill({ keysFrom: 'page' });
  expect(drill.hasAttribute('tabindex')).toBe(false);
  pressOn(document.body, 'Space');
  expect(drill.view?.state).toBe('running');
});

test('after a drill, digits typed elsewhere in the page are no answer', async () => {
  const { drill } = await trialDrill({ keysFrom: 'focus' });
  const begun = heard<{ record: DrillRecord }>(drill, 'lark-begin');
  drill.begin();
  const after = Object.assign(document.createElement('lark-after'), { record: begun[0]?.record });
  document.body.append(after);
  await after.updateComplete;
  expect(pressOn(document.body, 'Digit7').defaultPrevented).toBe(false);
  expect(pressOn(after, 'Digit7').defaultPrevented).toBe(true);
});
