import { createJournal, type DrillRecord, dayNumber, dayOfNumber } from '@larkhold/engine';
import { afterEach, expect, test } from 'vitest';
import { page as frame } from 'vitest/browser';
import '@larkhold/ui/tokens.css';
import { leaveTrial, openTrialApp, type TrialApp, textOf } from '../shell/trial-app.ts';

let trial: TrialApp;

afterEach(leaveTrial);

const TODAY = '2026-11-25'; // the trial app's Wednesday
const rep = { block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: 30_000, heldMs: 30_000, outcome: 'held' } as const;
const drillOn = (date: string, more: Partial<DrillRecord> = {}): DrillRecord => ({
  ...{ id: date, program: 'Attic mornings', date, pain: false, effort: 5 },
  ...{ startedAt: `${date}T06:00:00Z`, endedAt: `${date}T06:20:00Z` },
  reps: Array.from({ length: 20 }, (_, at) => ({ ...rep, rep: at })),
  ...more,
});
/** Five mornings a week for a year. */
const year = Array.from({ length: 364 }, (_, back) => dayOfNumber(dayNumber(TODAY) - back))
  .filter((day) => dayNumber(day) % 7 > 1)
  .map((day) => drillOn(day));

const journal = () => trial.page.shadowRoot?.querySelector('lark-journal')?.shadowRoot;
const strip = () => journal()?.querySelector('year-strip')?.shadowRoot;
const rows = () => [
  ...(journal()?.querySelector('month-drills')?.shadowRoot?.querySelectorAll('lark-drill-entry') ?? []),
];
const idsShown = () => rows().map(({ record }) => record?.id);

async function open(hash: string, drills: readonly DrillRecord[]): Promise<void> {
  trial = await openTrialApp(hash);
  await trial.state.app?.act.takeIn({ journal: { ...createJournal(), drills: [...drills] } });
  await expect.poll(() => rows().length).toBeGreaterThan(0);
}

test('a year of drills is three screens of a phone at the most, and each of them is one press away', async () => {
  await frame.viewport(390, 844);
  await open('#/journal', year);
  expect(idsShown()).toEqual(year.filter(({ date }) => date.startsWith('2026-11')).map(({ id }) => id));
  expect(document.documentElement.scrollHeight / 844).toBeLessThanOrEqual(3.05);
  const buttons = [...(strip()?.querySelectorAll('button') ?? [])];
  expect(buttons).toHaveLength(12);
  const seen = new Set<string | undefined>();
  for (const button of buttons) {
    button.click();
    await expect.poll(() => button.getAttribute('aria-pressed')).toBe('true');
    await expect.poll(() => rows().length).toBeGreaterThan(0);
    expect(document.documentElement.scrollHeight / 844).toBeLessThanOrEqual(3.05);
    for (const id of idsShown()) seen.add(id);
  }
  // The first days of the oldest week are in the thirteenth month.
  journal()?.querySelector('month-calendar')?.shadowRoot?.querySelector('button')?.click();
  buttons[0]?.click();
  await expect.poll(() => buttons[0]?.getAttribute('aria-pressed')).toBe('true');
  const before = journal()?.querySelector('month-drills')?.shadowRoot?.querySelector<HTMLButtonElement>('.row button');
  expect(textOf(before)).toBe('Show November 2025');
  before?.click();
  await expect.poll(() => idsShown()[0]?.slice(0, 7)).toBe('2025-11');
  for (const id of idsShown()) seen.add(id);
  expect(seen.size).toBe(year.length);
  expect(await trial.faults()).toEqual([]);
});

test('a drill of long ago opens in its own month, and another month can be chosen after it', async () => {
  await open('#/journal/2026-03-17', [drillOn('2026-03-17'), drillOn(TODAY)]);
  await expect.poll(() => rows()[0]?.renderRoot.querySelector('details')?.open).toBe(true);
  expect(idsShown()).toEqual(['2026-03-17']);
  const last = [...(strip()?.querySelectorAll('button') ?? [])].at(-1);
  expect(last?.getAttribute('aria-label')?.replaceAll('\u00a0', ' ')).toBe('November 2026: 10 min at full draw');
  last?.click();
  await expect.poll(idsShown).toEqual([TODAY]);
});

test('a drill’s question about pain is answered yes, no or not at all', async () => {
  await open(`#/journal/${TODAY}`, [{ ...drillOn(TODAY), pain: undefined }]);
  await expect.poll(() => rows()[0]?.renderRoot.querySelector('details')?.open).toBe(true);
  const answers = () => [...(rows()[0]?.renderRoot.querySelectorAll<HTMLButtonElement>('.pain button') ?? [])];
  const kept = () => trial.state.app?.view.journal.drills[0]?.pain;
  expect(answers().map((one) => [textOf(one), one.getAttribute('aria-pressed')])).toEqual([
    ['No', 'false'],
    ['Yes', 'false'],
  ]);
  for (const [index, pain] of [
    [1, true],
    [0, false],
    [0, undefined],
  ] as const) {
    answers()[index]?.click();
    await expect.poll(kept).toBe(pain);
  }
});

test('pain, an open drill and strange titles are whole in their rows, at 320 px and in twice the text', async () => {
  await frame.viewport(320, 640);
  const long = 'Holding'.repeat(18).slice(0, 120);
  await open('#/journal', [
    drillOn('2026-11-24', { program: long, pain: true }),
    drillOn('2026-11-23', { open: true, reps: Array.from({ length: 300 }, (_, at) => ({ ...rep, rep: at })) }),
  ]);
  for (const size of ['100%', '200%']) {
    document.documentElement.style.fontSize = size;
    await expect.poll(() => document.documentElement.scrollWidth).toBeLessThanOrEqual(320);
    const [painful, unclosed] = rows().map(({ renderRoot }) => renderRoot.querySelector('summary'));
    expect(textOf(painful)).toContain(`${long} pain`);
    expect(textOf(unclosed)).toContain('not closed');
    for (const row of [painful, unclosed]) expect(row!.scrollWidth).toBeLessThanOrEqual(row!.clientWidth + 1);
    for (const button of strip()?.querySelectorAll('button') ?? [])
      expect(Math.round(button.getBoundingClientRect().width)).toBeGreaterThanOrEqual(size === '100%' ? 24 : 20);
  }
});
