import { afterAll, expect, it } from 'vitest';
import { arrive, leaveAll } from './archer.ts';

afterAll(leaveAll);

it('a page whose part is missing at the host says so, the drill is reachable, and it comes when the host has it again', async () => {
  const { page, context, leave } = await arrive('');
  await page.getByRole('button', { name: 'Begin' }).waitFor();
  let isGone = true;
  await context.route(/\/assets\/(trends-page|week-page)-.*\.js$/, (route) =>
    isGone ? route.fulfill({ status: 404, body: 'not here' }) : route.continue(),
  );
  for (const hash of ['#/week', '#/trends']) {
    await page.evaluate((to) => {
      location.hash = to;
    }, hash);
    await page.getByRole('heading', { name: 'This page could not be loaded' }).waitFor();
  }
  expect(await page.getByText('A part of Larkhold could not be loaded').count()).toBe(0);
  await page.getByRole('button', { name: 'Try again' }).click();
  await page.getByText('Its part of Larkhold did not come from the host').waitFor();

  await page.locator('main').getByRole('link', { name: 'To the line' }).click();
  await page.getByRole('button', { name: 'Begin' }).click();
  await page.locator('lark-drill').waitFor();
  await page.reload();

  await page.evaluate(() => {
    location.hash = '#/trends';
  });
  await page.getByRole('heading', { name: 'This page could not be loaded' }).waitFor();
  isGone = false;
  await page.getByRole('button', { name: 'Try again' }).click();
  await page.getByRole('heading', { name: 'Trends' }).waitFor();
  await leave();
});
