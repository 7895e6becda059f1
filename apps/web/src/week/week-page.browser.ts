import type { DayEntry, Journal, WeekPage } from '@larkhold/engine';
import { builtInPrograms, createJournal } from '@larkhold/engine';
import { createKit } from '@larkhold/store';
import axe from 'axe-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { App, AppActions, AppView } from '../app-context.ts';
import '../look/tokens.css';
import './week-page.ts';

beforeEach(() => {
  document.documentElement.lang = 'en';
});
afterEach(() => {
  document.body.replaceChildren();
  document.documentElement.removeAttribute('data-theme');
});

/** The page over a journal in memory; a write is visible as soon as it resolves, as in the app. */
async function open(journal: Journal, changes: Partial<WeekPage> = {}) {
  const page = document.createElement('week-page');
  const written: { days: DayEntry[]; weeks: WeekPage[] } = { days: [], weeks: [] };
  const nothing = async (): Promise<void> => undefined;
  const act: AppActions = {
    ...{ chooseProgram: nothing, putProgram: nothing, removeProgram: nothing, putDrill: nothing },
    ...{ removeDrills: nothing, writeRep: nothing, putRunning: nothing, loadDemo: nothing, removeDemo: nothing },
    ...{ keepStored: nothing, saveBackup: nothing, mergeInto: nothing, replaceJournal: nothing, changeKit: nothing },
    setDrilling: () => undefined,
    saveFile: () => undefined,
    trySound: () => undefined,
    newId: () => 'new',
    instant: () => '2026-11-25T20:00:00Z',
    storedJournal: async () => journal,
    putMajorGoal: nothing,
    putNote: nothing,
    async putDay(entry) {
      written.days.push(entry);
      show({ days: [...current.days.filter(({ date }) => date !== entry.date), entry] });
    },
    async putWeek(week) {
      written.weeks.push(week);
      show({ weeks: [...current.weeks.filter((one) => one.week !== week.week), week] });
    },
  };
  let current = {
    ...journal,
    weeks: [...journal.weeks, ...(changes.week ? [{ ...changes, week: changes.week }] : [])],
  };
  const show = (part: Partial<Journal>): void => {
    current = { ...current, ...part };
    const view: AppView = {
      ...{ today: '2026-11-25', programs: builtInPrograms, openedIds: new Set<string>(), chosen: builtInPrograms[0]! },
      ...{ journal: current, kit: createKit(), where: 'disk', persistence: 'kept', isDrilling: false },
    };
    const app: App = { view, act };
    page.app = app;
  };
  show({});
  page.week = '2026-W48';
  document.body.append(page);
  await page.updateComplete;
  const type = async (label: string, text: string) => {
    const field = [...page.renderRoot.querySelectorAll('label')].find((one) => one.textContent?.includes(label));
    const input = field?.querySelector<HTMLInputElement>('input, textarea');
    if (!input) throw new Error(`there is no field '${label}'`);
    input.value = text;
    input.dispatchEvent(new InputEvent('input', { bubbles: true }));
    await page.updateComplete;
  };
  return { page, written, type };
}

const journal: Journal = {
  ...createJournal(),
  days: [{ date: '2026-11-25', readiness: 'heavy', note: 'Windy' }],
  weeks: [{ week: '2026-W47', carriedForward: 'Low front shoulder', plannedDays: [1, 3] }],
};

test('what was carried forward is the focus until another one is typed', async () => {
  const { page, type, written } = await open(journal);
  expect(page.renderRoot.querySelector<HTMLInputElement>('.focus')?.value).toBe('Low front shoulder');
  await type('Focus', 'Slow draw');
  await type('What went right', 'Set-up');
  page.remove();
  await expect
    .poll(() => written.weeks.at(-1))
    .toMatchObject({ week: '2026-W48', focus: 'Slow draw', wentRight: 'Set-up' });
  expect(written.weeks).toHaveLength(1);
});

test('a day is written as it is typed, and keeps what another place wrote', async () => {
  const { page, written } = await open(journal);
  const entry = page.renderRoot.querySelector('day-entry');
  entry?.renderRoot.querySelectorAll<HTMLInputElement>('input[type=radio]')[3]?.click();
  await expect
    .poll(() => written.days.at(-1))
    .toEqual({ date: '2026-11-25', readiness: 'heavy', note: 'Windy', feel: 4, editedAt: '2026-11-25T20:00:00Z' });
});

test('a day that is still to come cannot be filled in', async () => {
  const { page } = await open(journal);
  page.day = '2026-11-27';
  await page.updateComplete;
  expect(page.renderRoot.querySelector('day-entry')).toBeNull();
});

test.each(['dark', 'light', 'contrast'])('axe finds nothing and nothing overflows 320 px, theme %s', async (theme) => {
  document.documentElement.dataset.theme = theme;
  const { page } = await open(journal, { week: '2026-W48', comment: 'Coach: slower.', goal: 'Ten clean holds' });
  page.style.width = '288px';
  await page.updateComplete;
  expect(page.scrollWidth).toBeLessThanOrEqual(288);
  expect((await axe.run(page, { resultTypes: ['violations'] })).violations).toEqual([]);
});
