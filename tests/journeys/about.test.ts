import { builtInPrograms, parseProgram } from '@larkhold/engine';
import { afterAll, expect, inject, it } from 'vitest';
import { arrive, leaveAll } from './archer.ts';

afterAll(leaveAll);

it('the front page runs a drill, hands out programs that open, and serves the schemas', async () => {
  const { page, faults, leave } = await arrive('#/line');
  const address = inject('address');
  await page.goto(new URL('about.html', address).href);
  const links = await page
    .locator('#files a')
    .evaluateAll((all) => all.map((link) => (link as HTMLAnchorElement).href));
  expect(links.length).toBeGreaterThanOrEqual(12);
  expect(links).toHaveLength(builtInPrograms.length);
  for (const link of links) expect(parseProgram(await (await fetch(link)).text()).ok, link).toBe(true);
  for (const name of ['program', 'season', 'journal', 'hand-over', 'backup']) {
    const schema = await (await fetch(new URL(`schemas/${name}.schema.json`, address))).json();
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
  }
  await page.getByRole('button', { name: /^Begin/ }).click();
  await page.getByText('Done. 2 of 2 held.').waitFor();
  expect(faults).toEqual([]);
  await leave();
});

it('is in German too, with a German drill, whatever the browser speaks', async () => {
  const { page, faults, leave } = await arrive('about.html');
  await page.getByRole('link', { name: 'Diese Seite auf Deutsch' }).click();
  await page.getByRole('heading', { name: 'Programme zum Mitnehmen' }).waitFor();
  await page.getByRole('button', { name: /^Beginnen/ }).waitFor();
  const links = page.locator('#files a');
  expect(await links.count()).toBe(builtInPrograms.length);
  expect(await links.first().textContent()).not.toBe(builtInPrograms[0]!.title);
  const file = await links.first().evaluate((link) => (link as HTMLAnchorElement).href);
  expect(parseProgram(await (await fetch(file)).text()).ok).toBe(true);
  await page.getByRole('link', { name: 'This page in English' }).click();
  await page.getByRole('heading', { name: 'Programs to take' }).waitFor();
  expect(faults).toEqual([]);
  await leave();
});
