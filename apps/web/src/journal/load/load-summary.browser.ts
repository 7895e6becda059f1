import { afterEach, beforeEach, expect, test } from 'vitest';
import { page as window_ } from 'vitest/browser';
import '@larkhold/ui/tokens.css';
import { openTrialApp, type TrialApp, textOf } from '../../shell/trial-app.ts';

let trial: TrialApp;

beforeEach(async () => {
  trial = await openTrialApp('#/journal');
  await trial.state.app?.act.loadDemo();
  await expect.poll(() => summary()?.querySelector('summary')).toBeTruthy();
  summary()?.querySelector('summary')?.click();
});

afterEach(() => window_.viewport(1280, 900));

const summary = () =>
  trial.page.shadowRoot?.querySelector('lark-journal')?.shadowRoot?.querySelector('load-summary')?.shadowRoot;
const estimate = () => summary()?.querySelector('on-fingers-estimate')?.shadowRoot;

test('hold time, impulse and load of today and two weeks are in a table, and the caution is beside the ratios', async () => {
  const rows = [...(summary()?.querySelectorAll('tbody th') ?? [])].map(textOf);
  expect(rows).toEqual(['At full draw', 'Draw impulse', 'Load']);
  expect(textOf(summary())).toMatch(/Acute:chronic ratio, 7 days over 28: \d\.\d\d by plain means, \d\.\d\d when/);
  expect(textOf(summary()?.querySelector('.caution'))).toBe(
    'This ratio describes what was done. It does not predict injury.',
  );
  for (const theme of ['dark', 'light', 'contrast']) {
    document.documentElement.dataset.theme = theme;
    expect(await trial.faults()).toEqual([]);
  }
  await window_.viewport(320, 700);
  const details = summary()?.querySelector('details');
  expect(details?.scrollWidth).toBeLessThanOrEqual(details?.clientWidth ?? 0);
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(320);
});

test('what a camera saw of the time at full draw has a row of its own, and only then', async () => {
  const { app } = trial.state;
  const record =
    app?.view.journal.drills.find(({ date }) => date === app?.view.today) ?? app?.view.journal.drills.at(-1);
  if (!app || !record) throw new Error('no drill in the demo');
  const reps = record.reps.map((rep) => ({ ...rep, seen: { fromMs: 0, toMs: rep.heldMs } }));
  await app.act.putDrill({ ...record, id: 'watched', date: app.view.today, reps });
  await expect
    .poll(() => [...(summary()?.querySelectorAll('tbody th') ?? [])].map(textOf))
    .toEqual(['At full draw', 'Of that, as the camera saw it', 'Draw impulse', 'Load']);
});

test('the weight on the fingers is estimated from mark and draw length, and kept only when asked', async () => {
  expect(textOf(estimate())).toContain('or your draw length for an estimate');
  await trial.state.app?.act.changeKit({ drawLengthIn: 29 });
  await expect.poll(() => estimate()?.querySelector('input')).toBeTruthy();
  const input = estimate()?.querySelector('input') as HTMLInputElement;
  input.value = '38';
  input.dispatchEvent(new Event('input'));
  // Common practice, no source: 2 lb an inch up to 40 lb, counted from 28 in.
  await expect.poll(() => textOf(estimate()?.querySelector('[role=status]'))).toContain('About 40 lb');
  expect(textOf(estimate()?.querySelector('[role=status]'))).toContain(
    'A bow scale at your own draw length is better.',
  );
  expect(trial.state.app?.view.kit.drawWeightLbf).toBeUndefined();
  estimate()?.querySelector('button')?.click();
  await expect.poll(() => trial.state.app?.view.kit.drawWeightLbf).toBe(40);
});
