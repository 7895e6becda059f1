import { afterAll, expect, it } from 'vitest';
import { arrive, leaveAll } from './archer.ts';
import { holdsFile, takeProgram } from './drill-program.ts';
import { drillView, pass, passToHold, passUntil, standStill } from './fast-time.ts';
import { outcomesOf, storedDrills } from './stored-rows.ts';

afterAll(leaveAll);

it('Back in mid-hold asks and stops nothing; in a rest it asks first and stops second; after the drill it leaves', async () => {
  const { page, context, faults, leave } = await arrive('#/journal');
  await takeProgram(page, holdsFile(8, 3));
  await standStill(context);
  await page.getByRole('button', { name: 'Begin' }).click();
  await page.locator('lark-drill').waitFor();
  const question = page.locator('lark-drill .question');

  expect(await passToHold(page)).toBe(true);
  await pass(context, 1000);
  for (let press = 0; press < 3; press++) {
    await page.goBack();
    await question.waitFor();
    await page.waitForTimeout(100);
    expect(await drillView(page)).toMatchObject({ state: 'running', step: { kind: 'hold', rep: 0 } });
  }
  // The question goes by itself, and the hold counts to its end.
  await passUntil(context, page.getByText(/rep 2 of 3/i).first());
  expect(await question.count()).toBe(0);
  expect(outcomesOf((await storedDrills(page))[0])).toEqual(['held']);

  // A link of before, from the list of a long press on Back, leaves no drill either.
  await page.evaluate(() => history.go(-2));
  await question.waitFor();
  expect(page.url()).toContain('#/line');
  await page.getByRole('button', { name: 'Keep going' }).click();
  await question.waitFor({ state: 'detached' });

  await page.getByRole('button', { name: 'Pause' }).click();
  await pass(context, 400);
  await page.goBack();
  await question.waitFor();
  await page.waitForTimeout(100);
  await pass(context, 400); // a bounce is no answer
  await page.goBack();
  await page.getByText('How was it?').waitFor();
  await page.waitForTimeout(100);
  await page.goBack();
  await page.locator('lark-after').waitFor({ state: 'detached' });
  await page.getByRole('heading', { level: 1 }).first().waitFor();
  expect(outcomesOf((await storedDrills(page))[0])?.[0]).toBe('held');
  expect(faults).toEqual([]);
  await leave();
});

it('a drill that was run to its end leaves Back as it was', async () => {
  const { page, context, leave } = await arrive('#/journal');
  await takeProgram(page, holdsFile(2, 1));
  await standStill(context);
  await page.getByRole('button', { name: 'Begin' }).click();
  await page.locator('lark-drill').waitFor();
  await passUntil(context, page.getByText('How was it?'));
  await page.getByRole('button', { name: 'Skip', exact: true }).click();
  await page.getByRole('button', { name: 'Done' }).click();
  await page.waitForTimeout(100);
  await page.goBack();
  await page.getByRole('heading', { name: 'Rack' }).waitFor();
  await leave();
});
