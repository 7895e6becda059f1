import type { DrillRecord, RepRecord } from '@larkhold/engine';
import { beforeEach, expect, test } from 'vitest';
import { page as window_ } from 'vitest/browser';
import '@larkhold/ui/tokens.css';
import { BASELINE_ID } from './own-hold.ts';
import { openTrialApp, type TrialApp, textOf } from './trial-app.ts';

const HOLDING_ID = '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1002';
let trial: TrialApp;

beforeEach(async () => {
  trial = await openTrialApp(`#/rack/${HOLDING_ID}`);
});

const program = () => trial.page.shadowRoot?.querySelector('lark-program')?.shadowRoot;
const curve = () => program()?.querySelector('fatigue-curve')?.shadowRoot;
const offer = () => curve()?.querySelector('own-hold-offer')?.shadowRoot;
const press = (words: RegExp) =>
  [...(offer()?.querySelectorAll('button') ?? [])].find((button) => words.test(textOf(button)))?.click();

function baseline(date: string, heldReps: number): DrillRecord {
  const reps = Array.from({ length: heldReps + 1 }, (_, rep): RepRecord => {
    const isLast = rep === heldReps;
    return {
      ...{ block: 0, set: 0, rep, hand: 'usual', prescribedMs: 15_000 },
      ...{ heldMs: isLast ? 6000 : 15_000, outcome: isLast ? 'short' : 'held' },
    };
  });
  const at = `${date}T06:30:00Z`;
  return { id: `b-${date}`, program: 'Baseline test', programId: BASELINE_ID, date, startedAt: at, endedAt: at, reps };
}

test('with too little data there is no curve, the page says so and offers the test', async () => {
  await expect.poll(() => textOf(offer())).toContain('Too little data');
  expect(curve()?.querySelector('svg')).toBeNull();
  expect(await trial.faults()).toEqual([]);
  press(/baseline test today/);
  await expect.poll(() => trial.state.app?.view.chosen.id).toBe(BASELINE_ID);
});

test('with a longest hold in the kit there is a curve to scale, in words too, with its caution', async () => {
  await trial.state.app?.act.changeKit({ maxHoldSeconds: 20 });
  await expect.poll(() => curve()?.querySelector('svg')?.getAttribute('role')).toBe('img');
  // Who can hold 20 s is asked for holds that leave something, never for the program's own 30 s.
  expect(textOf(curve()?.querySelector('.words'))).toMatch(
    /^You should hold all 20\. At the hardest moment about [1-9]\d % is left \(an estimate\)\./,
  );
  expect(curve()?.querySelector('.fails')).toBeNull();
  expect(textOf(curve()?.querySelector('.caution'))).toContain('It was not calibrated on archers');
  for (const theme of ['dark', 'light', 'contrast']) {
    document.documentElement.dataset.theme = theme;
    expect(await trial.faults()).toEqual([]);
  }
});

test('a baseline result is offered, used only when the archer agrees, and a test is due again after four weeks', async () => {
  await trial.state.app?.act.putDrill(baseline('2026-11-24', 5));
  await expect
    .poll(() => textOf(offer()?.querySelector('[aria-label="Baseline test"]')))
    .toContain('Keep it as yours?');
  expect(trial.state.app?.view.kit.maxHoldSeconds).toBeUndefined();
  expect(await trial.faults()).toEqual([]);
  press(/^Take \d+ s$/);
  await expect.poll(() => trial.state.app?.view.kit.maxHoldSeconds).toBeGreaterThan(15);
  await expect.poll(() => offer()?.querySelector('[aria-label="Baseline test"]') ?? null).toBeNull();
  await trial.state.app?.act.removeDrills(['b-2026-11-24']);
  await trial.state.app?.act.putDrill(baseline('2026-10-20', 5));
  await expect.poll(() => textOf(offer())).toContain('Your last baseline test was 5 weeks ago');
  location.hash = '#/line';
  const line = () => trial.page.shadowRoot?.querySelector('lark-line')?.shadowRoot;
  const summary = () => line()?.querySelector('fatigue-fold')?.shadowRoot?.querySelector('summary');
  await expect.poll(() => textOf(summary())).toContain('Your last baseline test was 5 weeks ago');
});

test('on the line the outlook is one line, and nothing is wider than a small telephone', async () => {
  await trial.state.app?.act.changeKit({ maxHoldSeconds: 60, programId: HOLDING_ID });
  await window_.viewport(320, 700);
  location.hash = '#/line';
  const fold = () =>
    trial.page.shadowRoot?.querySelector('lark-line')?.shadowRoot?.querySelector('fatigue-fold')?.shadowRoot;
  await expect
    .poll(() => textOf(fold()?.querySelector('summary')))
    .toMatch(/How hard it will be ?(you could no longer hold|You should hold)/);
  fold()?.querySelector('summary')?.click();
  await expect.poll(() => fold()?.querySelector('fatigue-curve')?.shadowRoot?.querySelector('svg')).toBeTruthy();
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(320);
  expect(await trial.faults()).toEqual([]);
  await window_.viewport(1280, 900);
});
