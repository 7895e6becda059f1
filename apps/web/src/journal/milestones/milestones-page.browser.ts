import { createJournal } from '@larkhold/engine';
import axe from 'axe-core';
import { expect, test } from 'vitest';
import { openTrialApp } from '../../shell/files/trial-app.ts';
import './milestones-page.ts';

const minute = { id: 'm1', text: 'A minute at full draw', setDay: '2026-03-01' };
const winter = { id: 'm2', text: '<b>A winter</b> without pain', setDay: '2025-10-01', reachedDay: '2026-04-01' };

async function open() {
  const page = document.createElement('milestones-page');
  const { store } = await openTrialApp(page, { ...createJournal(), milestones: [minute, winter] });
  document.body.append(page);
  await page.updateComplete;
  const press = async (words: string) => {
    const found = [...page.renderRoot.querySelectorAll('button')].find(
      (one) => (one.ariaLabel ?? one.textContent?.trim()) === words,
    );
    if (!found) throw new Error(`there is no button ${words}`);
    found.click();
    await page.updateComplete;
  };
  const kept = async () => (await store.journal()).milestones ?? [];
  const lists = () =>
    ['open', 'reached'].map((which) =>
      [...page.renderRoot.querySelectorAll(`.wall.${which} .text`)].map((one) => one.textContent),
    );
  return { page, press, kept, lists, store };
}

test('open and reached milestones are in lists of their own, as they were written', async () => {
  const { lists } = await open();
  expect(lists()).toEqual([['A minute at full draw'], ['<b>A winter</b> without pain']]);
});

test('one is written down, reached on a day, in own words', async () => {
  const { page, press, kept, lists } = await open();
  const field = page.renderRoot.querySelector<HTMLInputElement>('form.new input')!;
  field.value = '  Sixty arrows in a row ';
  field.dispatchEvent(new InputEvent('input'));
  page.renderRoot.querySelector<HTMLFormElement>('form.new')?.requestSubmit();
  await expect.poll(() => lists()[0]).toEqual(['A minute at full draw', 'Sixty arrows in a row']);
  await press('Reached: A minute at full draw');
  const words = page.renderRoot.querySelector('textarea')!;
  words.value = 'On a cold morning';
  words.dispatchEvent(new InputEvent('input'));
  await page.updateComplete;
  page.renderRoot.querySelector<HTMLFormElement>('form.edit')?.requestSubmit();
  await expect.poll(() => lists()[1]).toEqual(['A minute at full draw', '<b>A winter</b> without pain']);
  expect((await kept()).find(({ id }) => id === 'm1')).toEqual({
    ...{ ...minute, reachedDay: '2026-11-25', words: 'On a cold morning' },
    editedAt: '2026-11-25T20:00:00Z',
  });
});

test('a removed one leaves a mark, and comes back', async () => {
  const { press, kept, lists, store } = await open();
  await press('Change: A minute at full draw');
  await press('Take it off');
  await expect.poll(() => lists()[0]).toEqual([]);
  expect((await store.journal()).removed).toMatchObject([{ of: 'milestones', key: 'm1' }]);
  expect((await kept()).map(({ id }) => id)).not.toContain('m1');
  await press('Undo');
  await expect.poll(() => lists()[0]).toEqual(['A minute at full draw']);
});

test.each(['dark', 'light', 'contrast'])('axe finds nothing and nothing overflows 320 px, theme %s', async (theme) => {
  document.documentElement.dataset.theme = theme;
  const { page, press } = await open();
  page.style.width = '288px';
  await press('Reached: A minute at full draw');
  expect(page.scrollWidth).toBeLessThanOrEqual(288);
  expect((await axe.run(page, { resultTypes: ['violations'] })).violations).toEqual([]);
});
