import { wcagContrast } from 'culori';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { page } from 'vitest/browser';
import './index.ts';
import type { LarkDrill } from './lark-drill.ts';
import { defaultRunnerSettings, type RunnerSettings } from './runner-settings.ts';
import { trialDrill } from './trial-drill.ts';

// Times follow from the prescription of the trial: ready 10 s, draw 3, hold 10, let down 3, rest 20.
const DRAW_AT_MS = 10_000;
const HOLD_AT_MS = 13_000;

// As large as a tablet: the number is in the drawing there, and not before it.
beforeEach(() => page.viewport(820, 1180));

afterEach(async () => {
  await page.viewport(414, 896);
});

async function drillOf(settings: Partial<RunnerSettings> = {}) {
  const { drill, environment } = await trialDrill({ settings: { ...defaultRunnerSettings, ...settings } });
  drill.begin();
  const find = (selector: string) => glanceOf(drill).renderRoot.querySelector(selector)!;
  const after = async (spanMs: number) => {
    environment.pass(spanMs);
    await drill.updateComplete;
    await glanceOf(drill).updateComplete;
  };
  await drill.updateComplete;
  return { find, after };
}

const glanceOf = (drill: LarkDrill) => drill.renderRoot.querySelector('lark-glance')!;

function middle(element: Element): number {
  const { left, width } = element.getBoundingClientRect();
  return left + width / 2;
}

// WCAG 2.2: text 4.5 (1.4.3), in the theme of high contrast 7 (1.4.6); what has to be seen to understand a drawing 3 (1.4.11).
test.each([
  ['dark', 4.5],
  ['light', 4.5],
  ['contrast', 7],
] as const)('words, number and bow stand out from the ground in every phase, theme %s', async (theme, least) => {
  const { find, after } = await drillOf({ theme });
  for (const spanMs of [100, DRAW_AT_MS, 3_000, 10_000, 3_000, 20_000]) {
    await after(spanMs);
    const ground = getComputedStyle(hostOf(find('.face')));
    for (const selector of ['.title', '.word', '.next', '.place', '.left']) {
      expect(
        wcagContrast(getComputedStyle(find(selector)).color, ground.backgroundColor),
        selector,
      ).toBeGreaterThanOrEqual(least);
    }
    expect(wcagContrast(getComputedStyle(find('.seconds')).fill, ground.backgroundColor)).toBeGreaterThanOrEqual(least);
    expect(wcagContrast(getComputedStyle(find('.string')).stroke, ground.backgroundColor)).toBeGreaterThanOrEqual(3);
    for (const selector of ['.limbs', '.grip', '.fingers']) {
      expect(
        wcagContrast(getComputedStyle(find(selector)).fill, ground.backgroundColor),
        selector,
      ).toBeGreaterThanOrEqual(3);
    }
  }
});

function hostOf(element: Element): Element {
  const root = element.getRootNode();
  return root instanceof ShadowRoot ? root.host : element;
}

test('who draws with the left hand sees the bow from the other side, and the number beside the string', async () => {
  const right = await drillOf({ hand: 'right' });
  await right.after(HOLD_AT_MS + 100);
  const [fingers, grip, screenMiddle] = [
    middle(right.find('.fingers')),
    middle(right.find('.grip')),
    middle(right.find('svg')),
  ];
  document.body.replaceChildren();
  const left = await drillOf({ hand: 'left' });
  await left.after(HOLD_AT_MS + 100);
  expect(Math.sign(fingers - grip)).toBe(-Math.sign(middle(left.find('.fingers')) - middle(left.find('.grip'))));
  expect(middle(left.find('.fingers')) - screenMiddle).toBeCloseTo(screenMiddle - fingers, 0);
  expect(middle(left.find('.grip')) - screenMiddle).toBeCloseTo(screenMiddle - grip, 0);
});

test('for the mirror all of it is turned over: what was on the left is on the right, words and all', async () => {
  const straight = await drillOf({ flipped: false });
  await straight.after(HOLD_AT_MS + 100);
  const width = straight.find('.face').getBoundingClientRect().width;
  const before = ['.fingers', '.grip', '.seconds', '.word'].map((selector) => middle(straight.find(selector)));
  document.body.replaceChildren();
  const flipped = await drillOf({ flipped: true });
  await flipped.after(HOLD_AT_MS + 100);
  expect(new DOMMatrix(getComputedStyle(flipped.find('.face')).transform).a).toBe(-1);
  for (const [index, selector] of ['.fingers', '.grip', '.seconds', '.word'].entries()) {
    expect(middle(flipped.find(selector)), selector).toBeCloseTo(width - before[index]!, 0);
  }
});

test('a pause is shown by a shape that no rest has, apart from its word', async () => {
  const { find, after } = await drillOf();
  await after(HOLD_AT_MS + 15_000);
  expect(find('.bars')).toBeNull();
  window.dispatchEvent(new KeyboardEvent('keydown', { code: 'KeyP' }));
  await after(50);
  const [bars, drawing] = [find('.bars').getBoundingClientRect(), find('svg').getBoundingClientRect()];
  expect(bars.height).toBeGreaterThan(drawing.width / 10);
  expect(bars.bottom).toBeLessThan(find('.seconds').getBoundingClientRect().bottom);
  expect(find('.seconds').textContent?.trim()).toBe('18');
});

test('more than fits is reached by the keyboard, and what fits takes no stop of it', async () => {
  const { find, after } = await drillOf();
  await after(HOLD_AT_MS + 100);
  const glance = hostOf(find('.face'));
  expect(glance.hasAttribute('tabindex')).toBe(false);
  document.documentElement.style.fontSize = '140px';
  await expect.poll(() => glance.getAttribute('tabindex')).toBe('0');
  document.documentElement.style.fontSize = '';
  await expect.poll(() => glance.hasAttribute('tabindex')).toBe(false);
});

/** How many pictures the string shows in a draw, and in one second of a hold. */
async function picturesOf(): Promise<{ draw: number; holdSecond: number }> {
  const { find, after } = await drillOf();
  const seen = async (spanMs: number, selector: string) => {
    const pictures = new Set<string | null>();
    for (let passed = 0; passed < spanMs; passed += 50) {
      await after(50);
      pictures.add(find(selector).getAttribute('d'));
    }
    return pictures.size;
  };
  await after(DRAW_AT_MS);
  const draw = await seen(2_950, '.string');
  await after(1_150);
  return { draw, holdSecond: await seen(800, '.lit') };
}

test('where motion is not wanted the string moves in a few steps, and its light by whole seconds', async () => {
  const moving = await picturesOf();
  expect(moving.draw).toBeGreaterThan(40);
  expect(moving.holdSecond).toBeGreaterThan(10);
  document.body.replaceChildren();
  const real = window.matchMedia.bind(window);
  vi.spyOn(window, 'matchMedia').mockImplementation((query) =>
    query.includes('prefers-reduced-motion') ? real('all') : real(query),
  );
  const still = await picturesOf();
  expect(still.draw).toBeLessThanOrEqual(6);
  expect(still.holdSecond).toBe(1);
});
