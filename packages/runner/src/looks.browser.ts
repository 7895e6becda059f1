import { afterEach, expect, test } from 'vitest';
import './index.ts';
import { trialDrill } from './trial-drill.ts';

afterEach(() => {
  document.head.querySelector('#looks')?.remove();
});

test('a page’s colours and parts reach the display inside', async () => {
  const { drill } = await trialDrill();
  const sheet = document.createElement('style');
  sheet.id = 'looks';
  sheet.textContent =
    'lark-drill { --lark-ink: rgb(1, 2, 3); --lark-font: monospace } lark-drill::part(word) { letter-spacing: 7px }';
  document.head.append(sheet);
  drill.begin();
  await drill.updateComplete;
  const glance = drill.renderRoot.querySelector('lark-glance')!;
  await glance.updateComplete;
  expect(getComputedStyle(glance).color).toBe('rgb(1, 2, 3)');
  expect(getComputedStyle(glance).fontFamily).toBe('monospace');
  expect(getComputedStyle(glance.renderRoot.querySelector('.word')!).letterSpacing).toBe('7px');
});
