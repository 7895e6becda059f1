import { afterEach, beforeEach, expect, test } from 'vitest';
import { page as window_ } from 'vitest/browser';
import '@larkhold/ui/tokens.css';
import { openTrialApp, type TrialApp, textOf } from '../../shell/trial-app.ts';

const HOLDING_ID = '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1002';
let trial: TrialApp;

beforeEach(async () => {
  trial = await openTrialApp(`#/plan/${HOLDING_ID}`);
});

afterEach(() => window_.viewport(1280, 900));

const plan = () => trial.page.shadowRoot?.querySelector('plan-page')?.shadowRoot;
const rows = () => [...(plan()?.querySelectorAll('tbody tr') ?? [])].map(textOf);
const weeks = () => [...(plan()?.querySelectorAll('.week > summary') ?? [])].map(textOf);
const field = (words: string) =>
  [...(plan()?.querySelectorAll('label') ?? [])]
    .find((label) => textOf(label).startsWith(words))
    ?.querySelector('input, select') as HTMLInputElement;

function choose(words: string, value: string): void {
  field(words).value = value;
  field(words).dispatchEvent(new Event('change'));
}

test('the coming weeks are in a table, week by week, each change with its reason', async () => {
  await expect.poll(() => rows().length).toBe(23); // two days left of this week, then seven weeks of three
  expect(rows()[0]).toContain('Full-draw holds 2 × 10, hold 30 s');
  expect(rows()[0]).toContain('10 min of 32 min');
  expect(rows()[0]).toContain('where the program begins');
  expect(plan()?.querySelectorAll('tbody details').length).toBe(23);
  // The file: every fourth training week is lighter.
  expect(weeks()[3]).toContain('lighter week');
  expect(rows()[2]).toContain('after 2 clean days in a row');
  for (const theme of ['dark', 'light', 'contrast']) {
    document.documentElement.dataset.theme = theme;
    expect(await trial.faults()).toEqual([]);
  }
});

test('days a week are kept in the kit; a competition of the season changes the plan', async () => {
  await expect.poll(() => rows().length).toBe(23);
  choose('Days a week', '2');
  await expect.poll(() => trial.state.app?.view.kit.plan?.daysPerWeek).toBe(2);
  const competitions = [{ title: 'County indoor', day: '2026-12-05', importance: 'main' as const }];
  const lists = { blocks: [], tests: [], competitions, restDays: [], dated: [] };
  await trial.state.app?.act.putSeason({ format: 'larkhold/season', version: 1, title: 'Winter', ...lists });
  await expect.poll(() => textOf(plan()?.querySelector('tr.competition'))).toContain('Competition');
  expect(weeks()[0]).toContain('lighter before the competition');
  choose('Weeks', '26');
  await expect.poll(() => weeks().length).toBeGreaterThan(20);
  expect(await trial.faults()).toEqual([]);
});

test('the plan is handed over as a calendar file', async () => {
  await expect.poll(() => rows().length).toBe(23);
  const button = [...(plan()?.querySelectorAll('button') ?? [])].find((one) => /calendar/.test(textOf(one)));
  button?.click();
  await expect.poll(() => trial.saved[0]?.name).toBe('holding-plan-2026-11-25.ics');
  expect(trial.saved[0]?.text.match(/BEGIN:VEVENT/g)?.length).toBe(23);
});

test('on a small telephone nothing is cut off', async () => {
  await window_.viewport(320, 700);
  await expect.poll(() => rows().length).toBe(23);
  for (const details of plan()?.querySelectorAll('details') ?? []) details.open = true;
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(320);
  expect(await trial.faults()).toEqual([]);
});
