import { openStore } from '@larkhold/store';
import axe from 'axe-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { type AppState, createAppState } from '../app-state.ts';
import '../look/tokens.css';
import '../lark-app.ts';
import type { LarkApp } from '../lark-app.ts';

let state: AppState;
let page: LarkApp;

beforeEach(async () => {
  state = createAppState({
    store: await openStore({ name: `asks-${performance.now()}` }),
    today: () => '2026-11-25',
    instant: () => '2026-11-25T06:00:00Z',
    newId: () => '00000000-0000-4000-8000-000000000001',
    saveFile: () => {},
    trySound: () => {},
    askForPersistence: async () => 'unknown',
  });
  location.hash = '#/line';
  page = document.createElement('lark-app');
  document.body.append(page);
  state.subscribe((app) => {
    page.app = app;
  });
  await state.reload();
  await state.app?.act.chooseProgram('5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1002');
});

afterEach(() => {
  page.remove();
  document.documentElement.removeAttribute('data-theme');
});

const line = () => page.shadowRoot?.querySelector('lark-line')?.shadowRoot;
const numbers = () => line()?.querySelector('lark-prescription')?.shadowRoot;
const choice = () => line()?.querySelector('readiness-choice')?.shadowRoot;
const plain = (text: string | null | undefined) => (text ?? '').replaceAll('\u00a0', ' ').trim();

async function expectClean(): Promise<void> {
  const { violations } = await axe.run(page, { resultTypes: ['violations'] });
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([]);
}

test('every number on the line answers why, by pointer and by keyboard, without beginning the drill', async () => {
  await expect.poll(() => numbers()?.querySelectorAll('button.asks').length).toBe(6);
  const [sets, reps, hold] = [...(numbers()?.querySelectorAll<HTMLButtonElement>('button.asks') ?? [])];
  expect(hold?.getAttribute('aria-label')).toBe('Why 30 s?');
  hold?.click();
  await expect.poll(() => plain(numbers()?.querySelector('.large + .answer')?.textContent)).toContain('Hold: 30 s.');
  expect(hold?.getAttribute('aria-expanded')).toBe('true');
  for (const theme of ['dark', 'light', 'contrast']) {
    document.documentElement.dataset.theme = theme;
    await expectClean();
  }
  reps?.focus();
  await userEvent.keyboard(' ');
  await expect.poll(() => plain(numbers()?.querySelector('.large + .answer')?.textContent)).toContain('Reps: 10.');
  expect(state.app?.view.isDrilling).toBe(false);
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => plain(numbers()?.querySelector('.large + .answer')?.textContent)).toBe('');
  expect(state.app?.view.isDrilling).toBe(false);
  expect(sets?.getAttribute('aria-label')).toBe('Why 2 sets?');
});

test('today’s own word is one press: kept in the diary, and its effect and reason stand there at once', async () => {
  await expect.poll(() => choice()?.querySelectorAll('button').length).toBe(3);
  await state.app?.act.putDay({ date: '2026-11-25', note: 'Windy' });
  const press = (word: string) =>
    [...(choice()?.querySelectorAll('button') ?? [])].find((button) => plain(button.textContent) === word)?.click();
  press('heavy');
  // docs/prescription.md: "heavy" keeps 0.7 of the reps.
  await expect
    .poll(() => plain(choice()?.querySelector('[role=status]')?.textContent))
    .toBe('Full-draw holds: 7 reps instead of 10, because you said today is heavy.');
  expect(plain(numbers()?.querySelector('.large')?.textContent)).toBe('2 × 7 × 30 s');
  expect(state.app?.view.journal.days).toMatchObject([{ date: '2026-11-25', note: 'Windy', readiness: 'heavy' }]);
  await expectClean();
  press('heavy');
  await expect.poll(() => plain(numbers()?.querySelector('.large')?.textContent)).toBe('2 × 10 × 30 s');
  expect(state.app?.view.journal.days[0]?.readiness).toBeUndefined();
});
