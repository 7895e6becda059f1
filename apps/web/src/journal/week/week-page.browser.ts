import { createJournal, type Journal } from '@larkhold/engine';
import axe from 'axe-core';
import { expect, test } from 'vitest';
import { openTrialApp } from '../../shell/files/trial-app.ts';
import './week-page.ts';

async function open(journal: Journal) {
  const page = document.createElement('week-page');
  const { store } = await openTrialApp(page, journal);
  page.week = '2026-W48';
  document.body.append(page);
  await page.updateComplete;
  const kept = async () => {
    const { days, weeks } = await store.journal();
    return { day: days.find(({ date }) => date === '2026-11-25'), week: weeks.find(({ week }) => week === '2026-W48') };
  };
  const type = async (label: string, text: string) => {
    const field = [...page.renderRoot.querySelectorAll('label')].find((one) => one.textContent?.includes(label));
    const input = field?.querySelector<HTMLInputElement>('input, textarea');
    if (!input) throw new Error(`there is no field '${label}'`);
    input.value = text;
    input.dispatchEvent(new InputEvent('input', { bubbles: true }));
    await page.updateComplete;
  };
  return { page, kept, type };
}

const journal: Journal = {
  ...createJournal(),
  days: [{ date: '2026-11-25', readiness: 'heavy', note: 'Windy' }],
  weeks: [{ week: '2026-W47', carriedForward: 'Low front shoulder', plannedDays: [1, 3] }],
};

test('what was carried forward is the focus until another one is typed', async () => {
  const { page, type, kept } = await open(journal);
  expect(page.renderRoot.querySelector<HTMLInputElement>('.focus')?.value).toBe('Low front shoulder');
  await type('Focus', 'Slow draw');
  await type('What went right', 'Set-up');
  page.remove();
  await expect.poll(async () => (await kept()).week).toMatchObject({ focus: 'Slow draw', wentRight: 'Set-up' });
});

test('a day is written as it is typed, and keeps what another place wrote', async () => {
  const { page, kept } = await open(journal);
  const entry = page.renderRoot.querySelector('day-entry');
  entry?.renderRoot.querySelectorAll<HTMLInputElement>('input[type=radio]')[3]?.click();
  await expect
    .poll(async () => (await kept()).day)
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
  const { page } = await open({
    ...journal,
    weeks: [...journal.weeks, { week: '2026-W48', comment: 'Coach: slower.', goal: 'Ten clean holds' }],
  });
  page.style.width = '288px';
  await page.updateComplete;
  expect(page.scrollWidth).toBeLessThanOrEqual(288);
  expect((await axe.run(page, { resultTypes: ['violations'] })).violations).toEqual([]);
});
