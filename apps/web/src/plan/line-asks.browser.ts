import { afterEach, beforeEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import '../look/tokens.css';
import { openTrialApp, type TrialApp, textOf } from './trial-app.ts';

let trial: TrialApp;

beforeEach(async () => {
  trial = await openTrialApp('#/line');
  await trial.state.app?.act.chooseProgram('5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1002');
});

afterEach(() => trial.close());

const line = () => trial.page.shadowRoot?.querySelector('lark-line')?.shadowRoot;
const numbers = () => line()?.querySelector('lark-prescription')?.shadowRoot;
const choice = () => line()?.querySelector('readiness-choice')?.shadowRoot;

test('every number on the line answers why, by pointer and by keyboard, without beginning the drill', async () => {
  await expect.poll(() => numbers()?.querySelectorAll('button.asks').length).toBe(6);
  const [sets, reps, hold] = [...(numbers()?.querySelectorAll<HTMLButtonElement>('button.asks') ?? [])];
  expect(hold?.getAttribute('aria-label')).toBe('Why 30 s?');
  hold?.click();
  await expect.poll(() => textOf(numbers()?.querySelector('.large + .answer'))).toContain('Hold: 30 s.');
  expect(hold?.getAttribute('aria-expanded')).toBe('true');
  for (const theme of ['dark', 'light', 'contrast']) {
    document.documentElement.dataset.theme = theme;
    expect(await trial.faults()).toEqual([]);
  }
  reps?.focus();
  await userEvent.keyboard(' ');
  await expect.poll(() => textOf(numbers()?.querySelector('.large + .answer'))).toContain('Reps: 10.');
  expect(trial.state.app?.view.isDrilling).toBe(false);
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => textOf(numbers()?.querySelector('.large + .answer'))).toBe('');
  expect(trial.state.app?.view.isDrilling).toBe(false);
  expect(sets?.getAttribute('aria-label')).toBe('Why 2 sets?');
});

test('today’s own word is one press: kept in the diary, and its effect and reason stand there at once', async () => {
  await expect.poll(() => choice()?.querySelectorAll('button').length).toBe(3);
  await trial.state.app?.act.putDay({ date: '2026-11-25', note: 'Windy' });
  const press = (word: string) =>
    [...(choice()?.querySelectorAll('button') ?? [])].find((button) => textOf(button) === word)?.click();
  press('heavy');
  // docs/prescription.md: "heavy" keeps 0.7 of the reps.
  await expect
    .poll(() => textOf(choice()?.querySelector('[role=status]')))
    .toBe('Full-draw holds: 7 reps instead of 10, because you said today is heavy.');
  expect(textOf(numbers()?.querySelector('.large'))).toBe('2 × 7 × 30 s');
  expect(trial.state.app?.view.journal.days).toMatchObject([{ date: '2026-11-25', note: 'Windy', readiness: 'heavy' }]);
  expect(await trial.faults()).toEqual([]);
  press('heavy');
  await expect.poll(() => textOf(numbers()?.querySelector('.large'))).toBe('2 × 10 × 30 s');
  expect(trial.state.app?.view.journal.days[0]?.readiness).toBeUndefined();
});
