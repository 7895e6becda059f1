import { createJournal, formatJournal, type Journal } from '@larkhold/engine';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launchShell } from '../../scripts/browser.mjs';
import { type Device, openDevice } from './device.ts';

let browser: Browser;
let device: Device;
beforeAll(async () => {
  browser = await launchShell();
  device = await openDevice(browser, inject('address'));
});
afterAll(async () => {
  await browser.close();
});

// Card, Moran and Newell 1980, The keystroke-level model: 1.1 s to point, 0.2 s to press, 0.28 s a key (average typist), 1.35 s to think. From memory.
const [POINT_AND_PRESS, KEY, THINK] = [1.3, 0.28, 1.35];

test('a day is written down in under ten seconds: arrows, feel and that nothing hurts', async () => {
  const { page, go, close } = await openDevice(browser, inject('address'));
  await go('#/journal');
  await page.evaluate(() => {
    const counts = { pointerdown: 0, keydown: 0 };
    Object.assign(window, { counts });
    addEventListener('pointerdown', () => counts.pointerdown++, { capture: true });
    addEventListener('keydown', () => counts.keydown++, { capture: true });
  });
  await page.getByRole('link', { name: 'Write down a day' }).click();
  await page.getByLabel('Practice arrows', { exact: true }).click();
  await page.keyboard.type('72');
  await page.getByLabel('Good', { exact: true }).check();
  await page.getByText('72 arrows · felt good').first().waitFor();
  const { pointerdown, keydown } = await page.evaluate(
    () => (window as unknown as { counts: Record<'pointerdown' | 'keydown', number> }).counts,
  );
  expect({ pointerdown, keydown }).toEqual({ pointerdown: 3, keydown: 2 });
  expect(pointerdown * (POINT_AND_PRESS + THINK) + keydown * KEY).toBeLessThan(10);
  await close();
});

const long = 'Slow draw, low front shoulder, and the string to the same place every time. '.repeat(12);

test('a day and a week are kept as they are typed', async () => {
  const { page, go } = device;
  await go('#/week');
  await page.getByLabel('Focus: the one thing worked on').fill('Low front shoulder');
  const more = page.getByRole('button', { name: 'Practice arrows: 6 more' });
  for (let presses = 0; presses < 5; presses += 1) await more.click();
  await page.getByLabel('Good', { exact: true }).check();
  await page.getByRole('group', { name: 'Pain today' }).getByRole('button', { name: 'Yes' }).click();
  await page.getByText('Stop for today.').waitFor();
  await page.getByLabel("Next week's focus").fill('Count two before every draw');
  // Left at once: what was typed must still arrive.
  await page.getByRole('link', { name: 'The week after' }).click();
  await expect
    .poll(() => page.getByLabel('Focus: the one thing worked on').inputValue())
    .toBe('Count two before every draw');
  await page.reload();
  await page.getByText('From the last review; type to change it.').waitFor();
  await go('#/week');
  await expect.poll(() => page.getByLabel('Practice arrows', { exact: true }).inputValue()).toBe('30');
  expect(await page.getByLabel('Good', { exact: true }).isChecked()).toBe(true);
  await page.getByText('30 arrows · felt good').first().waitFor();
});

/** The first days of March 2026, ISO week 10, with everything that a day can hold. */
const full: Journal = {
  ...createJournal(),
  days: ['02', '03', '04', '05', '06', '07', '08'].map((day) => ({
    date: `2026-03-${day}`,
    arrows: [{ kind: 'practice', count: 1250 }],
    work: [{ kind: 'fitness', minutes: 615 }],
    feel: 3,
    pain: true,
  })),
  drills: ['02', '03', '04', '05', '06', '07', '08'].map((day) => ({
    ...{ id: day, date: `2026-03-${day}`, program: 'Slow mornings' },
    ...{ startedAt: `2026-03-${day}T06:30:00Z`, endedAt: `2026-03-${day}T06:40:00Z` },
    reps: Array.from({ length: 120 }, (_, rep) => ({
      ...{ block: 0, set: 0, rep, hand: 'usual' as const },
      ...{ prescribedMs: 30_000, heldMs: 30_000, outcome: 'held' as const },
    })),
  })),
  weeks: [{ week: '2026-W10', sketch: [[0.1, 0.1, 0.9, 0.9, 0.1, 0.9]] }],
};

test.each(['A4', 'Letter'])('the week is one %s page, however much was written', async (format) => {
  const { page, go, give } = device;
  await go('#/files');
  await give('Open a file', 'full.journal.json', formatJournal(full));
  await page.getByRole('button', { name: 'Restore' }).click();
  await page.getByText('was restored').waitFor();
  await go('#/week/2026-W10');
  if (!(await page.getByLabel('Major goal').isVisible())) await page.getByText('Goals and plan').click();
  await page.getByLabel('Major goal').fill(long.slice(0, 1000));
  await page.getByLabel("This week's goal").fill(long.slice(0, 1000));
  await page.getByLabel('Focus: the one thing worked on').fill(long.slice(0, 400));
  for (const name of ['What went right', 'What needs work']) await page.getByLabel(name).fill(long);
  await page.getByLabel("Next week's focus").fill(long.slice(0, 400));
  const margin = { top: '12mm', bottom: '12mm', left: '10mm', right: '10mm' };
  const pdf = (await page.pdf({ format, margin })).toString('latin1');
  // ISO 32000-1, 7.7.3: every page is an object of /Type /Page.
  expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(1);
});
