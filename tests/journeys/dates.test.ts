import { readFile } from 'node:fs/promises';
import { type DayEntry, parseJournal } from '@larkhold/engine';
import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it, vi } from 'vitest';
import { type Archer, arrive, leaveAll } from './archer.ts';
import { PATIENCE_MS } from './patience.ts';
import { storedRows } from './stored-rows.ts';

afterAll(leaveAll);

/** Opens the week as an archer in a place sees it at an instant. */
async function openWeek(at: string, locale: string, timezoneId: string): Promise<Archer> {
  const archer = await arrive('#/week', { locale, timezoneId, acceptDownloads: true });
  await archer.context.clock.setFixedTime(at);
  await archer.page.reload();
  await archer.page.getByRole('heading', { level: 1 }).waitFor();
  return archer;
}

/** The words of a language that are pressed here. */
interface Words {
  sixMore: RegExp;
  journalFile: string;
}

const english: Words = {
  sixMore: /: 6 more$/,
  journalFile: 'Journal, for another device',
};
const german: Words = {
  sixMore: /: 6 mehr$/,
  journalFile: 'Tagebuch, für ein anderes Gerät',
};

/** Presses for six practice arrows more. @returns once they are on the disk */
async function sixMore(page: Page, words = english): Promise<void> {
  const before = await storedCount(page);
  // Practice arrows are the second of three kinds.
  await page.getByRole('button', { name: words.sixMore }).nth(1).click();
  await vi.waitFor(async () => expect(await storedCount(page)).toBe(before + 6), { timeout: PATIENCE_MS });
}

async function storedCount(page: Page): Promise<number> {
  const days = [...(await storedRows(page, 'days')).values()] as DayEntry[];
  return days.flatMap(({ arrows }) => arrows ?? []).reduce((sum, { count }) => sum + count, 0);
}

const listed = (page: Page) => page.locator('button.day b').allTextContents();
const weekday = (page: Page) => page.locator('button.day.today b').textContent();

async function savedDays(page: Page, words = english): Promise<[string, number | undefined][]> {
  const before = page.url();
  await page.goto(`${before.split('#')[0]}#/files`);
  const button = page.getByRole('button', { name: words.journalFile });
  const [download] = await Promise.all([page.waitForEvent('download'), button.click()]);
  await page.goto(before);
  const read = parseJournal(await readFile(await download.path(), 'utf8'));
  if (!read.ok) throw new Error(read.problems[0]?.message);
  return read.journal.days.map(({ date, arrows }: DayEntry) => [date, arrows?.[0]?.count]);
}

// ISO 8601: 2026 has 53 weeks; its last one is Monday 28 December 2026 to Sunday 3 January 2027.
describe.concurrent('a day is the archer’s own, wherever and whenever', () => {
  it('in New York weeks begin on Sunday, and the last day of the 53rd week is not yet the next', async () => {
    // 23.30 on Saturday there, half past four on Sunday in Greenwich.
    const { page, faults, leave } = await openWeek('2027-01-03T04:30:00Z', 'en-US', 'America/New_York');
    expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('Week 53');
    expect(await listed(page)).toEqual([
      ...['Sunday, December 27', 'Monday, December 28', 'Tuesday, December 29', 'Wednesday, December 30'],
      ...['Thursday, December 31', 'Friday, January 1', 'Saturday, January 2'],
    ]);
    expect(await weekday(page)).toBe('Saturday, January 2');
    await sixMore(page);
    expect(await savedDays(page)).toEqual([['2027-01-02', 6]]);
    expect(faults).toEqual([]);
    await leave();
  });

  it('in Berlin weeks begin on Monday, and half past midnight is a new year’s first week', async () => {
    // Still Sunday in Greenwich.
    const { page, faults, leave } = await openWeek('2027-01-03T23:30:00Z', 'de-DE', 'Europe/Berlin');
    expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('Woche 1');
    expect((await listed(page))[0]).toBe('Montag, 4. Januar');
    expect(await weekday(page)).toBe('Montag, 4. Januar');
    await sixMore(page, german);
    // Yesterday is on the page before, of a week 53, and can be filled in.
    await page.getByRole('link', { name: 'Die Woche davor' }).click();
    await page.getByRole('heading', { name: 'Woche 53' }).waitFor();
    await page.getByRole('button', { name: /Sonntag, 3\. Januar/ }).click();
    await sixMore(page, german);
    await sixMore(page, german);
    expect(await savedDays(page, german)).toEqual([
      ['2027-01-03', 12],
      ['2027-01-04', 6],
    ]);
    expect(faults).toEqual([]);
    await leave();
  });

  // New Zealand put its clocks back at 3.00 on 5 April 2026 (tz database, zone Pacific/Auckland): half past two came twice.
  it('an hour that comes twice is one day', async () => {
    const { page, context, faults, leave } = await openWeek('2026-04-04T13:30:00Z', 'en-NZ', 'Pacific/Auckland');
    expect(await weekday(page)).toMatch(/^Sunday,? 5 April$/);
    await sixMore(page);
    await context.clock.setFixedTime('2026-04-04T14:30:00Z');
    await page.reload();
    expect(await weekday(page)).toMatch(/^Sunday,? 5 April$/);
    await sixMore(page);
    expect(await savedDays(page)).toEqual([['2026-04-05', 12]]);
    expect(faults).toEqual([]);
    await leave();
  });

  // Central European clocks went forward at 2.00 on 29 March 2026 (tz database, zone Europe/Berlin): the day has 23 hours.
  it('a short day ends at its own midnight, and the week has seven days', async () => {
    const { page, context, faults, leave } = await openWeek('2026-03-29T21:59:00Z', 'de-DE', 'Europe/Berlin');
    expect(await weekday(page)).toBe('Sonntag, 29. März');
    expect(new Set(await listed(page)).size).toBe(7);
    await sixMore(page, german);
    await context.clock.setFixedTime('2026-03-29T22:00:00Z');
    await page.reload();
    expect(await weekday(page)).toBe('Montag, 30. März');
    await sixMore(page, german);
    expect(await savedDays(page, german)).toEqual([
      ['2026-03-29', 6],
      ['2026-03-30', 6],
    ]);
    expect(faults).toEqual([]);
    await leave();
  });
});
