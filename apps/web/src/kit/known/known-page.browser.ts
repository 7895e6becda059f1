import type { DrillRecord } from '@larkhold/engine';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { page as window_ } from 'vitest/browser';
import '@larkhold/ui/tokens.css';
import { openTrialApp, type TrialApp, textOf } from '../../shell/trial-app.ts';

let trial: TrialApp;

beforeEach(async () => {
  trial = await openTrialApp('#/known');
});

afterEach(() => window_.viewport(1280, 900));

const page = () => trial.page.shadowRoot?.querySelector('known-page')?.shadowRoot;
const section = (id: string) => page()?.querySelector(`section[aria-labelledby="${id}"]`);
const said = (id: string) => textOf(section(id));
const act = () => trial.state.app!.act;
const HOLDING = '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1002';
const drill = (date: string, heldMs: number, more: Partial<DrillRecord> = {}): DrillRecord => ({
  ...{ id: `drill ${date}`, program: 'Holding', programId: HOLDING, date, effort: 5 },
  ...{ startedAt: `${date}T06:00:00Z`, endedAt: `${date}T06:20:00Z`, durationMs: 1_200_000 },
  reps: [{ block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: heldMs, heldMs, outcome: 'held' }],
  ...more,
});

test('with nothing known it says so in every field, and shows what would come', async () => {
  await expect.poll(() => said('capacity')).toContain('Nothing is known yet');
  expect(said('exposure')).toContain('No bow and no band was drawn yet');
  expect(said('pain')).toContain('Not answered is not “none”');
  expect(said('rhythm')).toContain('No drill in the last four weeks');
  expect(said('tests')).toContain('No test was done');
  expect(said('response')).toContain('Too few drills');
  expect(section('climb')?.querySelector('lark-climb')).not.toBeNull();
  expect(await trial.faults()).toEqual([]);
});

test('every field says what is known and names the days it was read from', async () => {
  for (const [at, date] of ['2026-11-09', '2026-11-12', '2026-11-16', '2026-11-19', '2026-11-23'].entries()) {
    await act().putDrill(drill(date, 20_000 + at * 2000, { pain: at === 4 }));
  }
  await act().putDay({ date: '2026-11-24', arrows: [{ kind: 'practice', count: 60 }] });
  await expect.poll(() => said('capacity')).toContain('At least 26 s');
  expect(section('capacity')?.querySelector('.from a')?.getAttribute('href')).toBe('#/journal/drill%202026-11-19');
  expect(said('exposure')).toContain('60 arrows');
  expect(said('pain')).toMatch(/way back after pain on November 23: rest days.* 0 of 2 pain-free days/);
  expect(said('pain')).toContain('Read from');
  expect(said('rhythm')).toContain('usually takes 20 minutes');
  expect(said('response')).toContain('Your holds go up');
  const climb = section('climb')?.querySelector('lark-climb')?.shadowRoot;
  await expect.poll(() => textOf(climb)).toContain('From 22 s in the week of November 9 to 28 s now');
  for (const theme of ['dark', 'light', 'contrast']) {
    document.documentElement.dataset.theme = theme;
    expect(await trial.faults()).toEqual([]);
  }
});

test('what is wrong is corrected here: the longest hold, the minutes, the open question about pain', async () => {
  const [hold, minutes] = [section('capacity'), section('rhythm')].map((one) => one?.querySelector('input'));
  const set = (field: HTMLInputElement | null | undefined, value: string) => {
    field!.value = value;
    field!.dispatchEvent(new Event('change'));
  };
  set(hold, '38');
  await expect.poll(() => trial.state.app?.view.kit.maxHoldSeconds).toBe(38);
  await expect.poll(() => said('capacity')).toContain('About 38 s, as you said');
  set(hold, '4000');
  await expect.poll(() => said('capacity')).toContain('Seconds from 1 to 600');
  expect(trial.state.app?.view.kit.maxHoldSeconds).toBe(38);
  set(minutes, '25');
  await expect.poll(() => trial.state.app?.view.kit.plan?.usualMinutes).toBe(25);
  [...(section('pain')?.querySelectorAll('button') ?? [])].find((one) => textOf(one) === 'No')?.click();
  await expect.poll(() => said('pain')).toContain('None, as far as you said');
});

test('a test is shown with its change and its noise, and is one press away', async () => {
  const test = (date: string, heldMs: number) => ({
    ...drill(date, heldMs, { kind: 'test', program: 'Longest hold' }),
    programId: undefined,
  });
  const single = trial.state.app!.view.programs.filter(({ kind }) => kind === 'test');
  expect(single.length).toBeGreaterThan(0);
  for (const [date, heldMs] of [
    ['2026-10-01', 30_000],
    ['2026-11-12', 33_000],
  ] as const) {
    const [program] = single;
    await act().putDrill({ ...test(date, heldMs), program: program!.title, programId: program!.id! });
  }
  await expect.poll(() => section('tests')?.querySelectorAll('li').length).toBe(2);
  const button = section('tests')?.querySelector('button');
  button?.click();
  await expect.poll(() => trial.state.app?.view.chosen.kind).toBe('test');
});

test('on a small telephone nothing is cut off', async () => {
  await window_.viewport(320, 640);
  await act().loadDemo();
  await expect.poll(() => said('rhythm')).toContain('days a week');
  for (const details of section('climb')?.querySelector('lark-climb')?.shadowRoot?.querySelectorAll('details') ?? [])
    details.open = true;
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(320);
  expect(await trial.faults()).toEqual([]);
});
