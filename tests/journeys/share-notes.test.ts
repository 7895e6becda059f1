import { readFile } from 'node:fs/promises';
import { afterAll, expect, it } from 'vitest';
import { arrive, leaveAll } from './archer.ts';

afterAll(leaveAll);

it('keeps words and a drawing on the wall, through a reload and in the backup', async () => {
  const { page, faults, leave } = await arrive('#/rack', { acceptDownloads: true });
  await page.getByRole('button', { name: 'New note' }).click();
  await page.getByLabel('Words').fill('Elbow round, early');
  await page.locator('lark-sketch-pad svg').scrollIntoViewIfNeeded();
  const square = await page.locator('lark-sketch-pad svg').boundingBox();
  if (!square) throw new Error('the pad is not drawn');
  await page.mouse.move(square.x + 20, square.y + 20);
  await page.mouse.down();
  await page.mouse.move(square.x + 150, square.y + 120, { steps: 12 });
  await page.mouse.up();
  await page.getByLabel('Pinned to').selectOption({ label: 'Club starter' });
  await page.getByRole('button', { name: 'Put it up' }).click();
  await page.getByText('Up on the wall.').waitFor();

  await page.reload();
  await page.getByRole('img', { name: 'Elbow round, early, 1 stroke' }).waitFor();
  await page.getByRole('link', { name: 'Club starter' }).first().click();
  await page.getByText('Elbow round, early').waitFor();

  await page.goto(`${page.url().split('#')[0]}#/kit`);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save everything as a file' }).first().click(),
  ]);
  const backup = await readFile(await download.path(), 'utf8');
  expect(JSON.parse(backup).notes).toMatchObject([{ text: 'Elbow round, early' }]);
  expect(faults).toEqual([]);
  await leave();
});
