import { createJournal, type WeekPage } from '@larkhold/engine';
import { createKit, type Kit } from '@larkhold/store';
import axe from 'axe-core';
import { expect, test } from 'vitest';
import type { App } from '../shell/app-context.ts';
import './lark-in-mind.ts';

const drawing = [[0.1, 0.1, 0.9, 0.9]];

/** 25 November 2026 is in ISO week 48. */
async function inMind(week: Partial<WeekPage>, kit: Partial<Kit>, isDrilling = false) {
  const view: Partial<App['view']> = {
    today: '2026-11-25',
    journal: { ...createJournal(), weeks: [{ week: '2026-W48', ...week }] },
    kit: { ...createKit(), ...kit },
  };
  const element = document.createElement('lark-in-mind');
  Object.assign(element, { isDrilling, app: { view } as App });
  document.body.append(element);
  await element.updateComplete;
  const root = element.renderRoot;
  const pictures = [...root.querySelectorAll('lark-sketch-pad')];
  await Promise.all(pictures.map((picture) => picture.updateComplete));
  return { element, root, names: pictures.map((picture) => picture.renderRoot.querySelector('svg')?.ariaLabel) };
}

test('focus and shot process are on the line, in words and drawn', async () => {
  const { element, root, names } = await inMind(
    { focus: 'Low front shoulder', sketch: drawing },
    { shotProcess: ['Stance', 'Set-up'], shotSketch: drawing },
  );
  expect(root.querySelector('.focus')?.textContent).toBe('Low front shoulder');
  expect([...root.querySelectorAll('li')].map(({ textContent }) => textContent)).toEqual(['Stance', 'Set-up']);
  expect(names).toEqual(['Sketch of the focus, 1\u00a0stroke', 'Sketch of the shot process, 1\u00a0stroke']);
  expect((await axe.run(element)).violations.map(({ id }) => id)).toEqual([]);
});

test('beside a drill both are in one small strip, mirrored with the display', async () => {
  const { element, root, names } = await inMind(
    { focus: 'Low front shoulder', sketch: drawing },
    { shotProcess: ['Stance', 'Set-up'], shotSketch: drawing, viewing: { ...createKit().viewing, flipped: true } },
    true,
  );
  expect(root.querySelector('.words')?.textContent).toBe('Low front shoulder');
  expect(root.querySelector('.steps')?.textContent).toBe('Stance · Set-up');
  expect(names).toHaveLength(2);
  expect(root.querySelectorAll('button, h2')).toHaveLength(0); // only to look at
  expect(getComputedStyle(root.querySelector('.strip')!).transform).toBe('matrix(-1, 0, 0, 1, 0, 0)');
  expect((await axe.run(element)).violations.map(({ id }) => id)).toEqual([]);
});

test('what is not said takes no room', async () => {
  for (const isDrilling of [false, true]) {
    const { element } = await inMind({ focus: ' ' }, { shotProcess: [] }, isDrilling);
    expect(element.renderRoot.textContent?.trim()).toBe('');
    element.remove();
  }
  const { root } = await inMind({ sketch: drawing }, { shotProcess: [] });
  expect([...root.querySelectorAll('h2')].map(({ textContent }) => textContent)).toEqual(['Focus of the week']);
});

test('the focus of another week is not shown', async () => {
  const { root } = await inMind({ week: '2026-W46', focus: 'Old', sketch: drawing }, { shotProcess: [] });
  expect(root.textContent?.trim()).toBe('');
});
