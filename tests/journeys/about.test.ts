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
