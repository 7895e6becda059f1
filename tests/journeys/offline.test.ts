import type { Page } from 'playwright-core';
import { afterAll, expect, it } from 'vitest';
import { arrive, leaveAll } from './archer.ts';
import { holdsFile, takeProgram } from './drill-program.ts';
import { everyPage, goTo } from './every-page.ts';
import { outcomesOf, storedDrills } from './stored-rows.ts';
import { serveCopy } from './update.ts';

afterAll(leaveAll);

/** Waits until the app is on the device and serves this page. */
const kept = (page: Page) =>
  page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated', undefined, {
    polling: 100,
  });

it('after one load everything works without any network: pages, sound files, a drill', async () => {
  const { page, context, leave } = await arrive('#/line', { whole: true, serviceWorkers: 'allow' });
  await page.getByRole('button', { name: 'Begin' }).waitFor();
  await kept(page);
  await context.setOffline(true);
  // Not even loaded again: pages that come in later are on the device too.
  for (const hash of everyPage) await goTo(page, hash, { id: 'none', drill: 'none' });
  await page.reload();
  await page.getByRole('heading', { level: 1 }).first().waitFor();

  await takeProgram(page, holdsFile(2, 1));
  await page.evaluate(() => {
    const notices: string[] = [];
    Object.assign(window, { notices });
    addEventListener('lark-notice', (event) => notices.push((event as CustomEvent).detail.message));
  });
  await page.getByRole('button', { name: 'Begin' }).click();
  await page.getByText('How was it?').waitFor();
  const heard = await page.evaluate(() => ({
    notices: (window as unknown as { notices: string[] }).notices,
    sounds: performance
      .getEntriesByType('resource')
      .filter(({ name }) => /pack.*\.(webm|mp3)$/.test(name))
      .map((entry) => (entry as PerformanceResourceTiming).responseStatus),
  }));
  expect(heard.notices).toEqual([]);
  expect(heard.sounds).toContain(200);
  await leave();
});

it('a newer version waits while a drill runs, is offered after it, and reaches the other tab', async () => {
  const host = await serveCopy();
  const { page, context, leave } = await arrive('#/line', { whole: true, serviceWorkers: 'allow' }, host.address);
  const version = (tab: Page) => tab.locator('html').getAttribute('data-version');
  await kept(page);
  await takeProgram(page, holdsFile(3, 2));
  const other = await context.newPage();
  await other.goto(`${host.address}#/journal`);
  await other.getByRole('heading', { level: 1 }).waitFor();
  await kept(other);

  await page.bringToFront();
  await page.getByRole('button', { name: 'Begin' }).click();
  await page.locator('lark-drill').waitFor();
  host.renew('second');
  await page.evaluate(async () => void (await (await navigator.serviceWorker.ready).update()));
  await page.waitForFunction(async () => Boolean((await navigator.serviceWorker.ready).waiting), undefined, {
    polling: 100,
  });
  expect(await page.getByText('A newer version is ready.').count()).toBe(0);

  // Another tab takes it in the middle of this drill: old and new are side by side.
  await other.getByRole('button', { name: 'Use it now' }).click();
  await expect.poll(() => version(other)).toBe('second');
  await other.getByRole('heading', { level: 1 }).waitFor();
  expect(await version(page)).toBeNull();
  await page.getByText('How was it?').waitFor();
  expect(outcomesOf((await storedDrills(other))[0])).toEqual(['held', 'held']);
  await page.getByRole('button', { name: 'Skip', exact: true }).click();

  // The drill is over, and this page is of today's version too, with nothing lost.
  await expect.poll(() => version(page)).toBe('second');
  expect(outcomesOf((await storedDrills(page))[0])).toEqual(['held', 'held']);
  await leave();
  await host.close();
});
