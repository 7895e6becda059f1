import { afterAll, expect, inject, it } from 'vitest';
import { arrive, leaveAll } from './archer.ts';
import { holdsFile, phase, takeProgram } from './drill-program.ts';
import { outcomesOf, storedDrills } from './stored-rows.ts';

afterAll(leaveAll);

it('one drill at a time: a second tab says where it runs, and begins when it is free', async () => {
  const { page, context, faults, leave } = await arrive('#/line');
  await takeProgram(page, holdsFile(60, 2));
  const other = await context.newPage();
  await other.goto(`${inject('address')}#/line`);
  await other.getByRole('button', { name: 'Begin' }).waitFor();
  await page.bringToFront();
  await page.keyboard.press('Space');
  await phase(page, 'Hold').waitFor();

  // Both a tab that was there before and one that comes later.
  const late = await context.newPage();
  await late.goto(`${inject('address')}#/line`);
  for (const tab of [other, late]) {
    await tab.getByText('Attic holds runs in another tab of this browser.').waitFor();
    expect(await tab.getByRole('button', { name: 'Go on with it' }).count()).toBe(0);
    await tab.getByRole('button', { name: 'Begin' }).click();
    await tab.getByText('Not begun: a drill runs in another tab of this browser.').waitFor();
    expect(await tab.locator('lark-drill').count()).toBe(0);
  }

  await page.close();
  await late.getByRole('group', { name: 'Interrupted drill' }).waitFor();
  await other.getByRole('group', { name: 'Interrupted drill' }).waitFor();
  await late.getByRole('button', { name: 'Close it' }).click();
  await other.getByRole('group', { name: 'Interrupted drill' }).waitFor({ state: 'detached' });
  const [record] = await storedDrills(late);
  expect(outcomesOf(record)?.at(-1)).toBe('unsure');
  await other.bringToFront();
  await other.getByRole('button', { name: 'Begin' }).click();
  await other.locator('lark-drill').waitFor();
  expect(faults).toEqual([]);
  await leave();
});
