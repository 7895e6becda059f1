import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { arrive, leaveAll } from './archer.ts';
import { holdsFile, takeProgram } from './drill-program.ts';
import { drillView, pass, passToHold, passUntil, standStill } from './fast-time.ts';
import { outcomesOf, storedDrills } from './stored-rows.ts';

afterAll(leaveAll);

const HOLD_MS = 6000;

/** Drills until some way into the second hold, from a moment of the wall clock on. */
async function drillIntoSecondHold(page: Page, wallClock: string): Promise<void> {
  const context = page.context();
  await standStill(context, Date.parse(wallClock));
  await takeProgram(page, holdsFile(HOLD_MS / 1000, 3));
  await page.getByRole('button', { name: 'Begin' }).click();
  await page.locator('lark-drill').waitFor();
  await passToHold(page);
  await pass(context, HOLD_MS);
  await passToHold(page);
  await pass(context, 2000);
}

/** Drills to the end. @returns what the disk holds of it */
async function endOf(page: Page) {
  await passUntil(page.context(), page.getByText('How was it?'));
  await page.getByRole('button', { name: 'Skip', exact: true }).click();
  await page.getByRole('heading', { name: 'Logged' }).waitFor();
  return (await storedDrills(page)).at(-1);
}

const allHeld = ['held', 'held', 'held'];

// A page that is frozen is met in hands-free.test.ts, in a tab that is truly hidden.
describe.concurrent('time', () => {
  it('a clock that runs ahead in mid-hold, as after a sleep that stopped the page clock, is a gap', async () => {
    const { page, context, faults, leave } = await arrive('#/line', { timezoneId: 'Europe/Berlin' });
    await drillIntoSecondHold(page, '2026-05-05T06:30:00Z');
    await context.clock.setSystemTime('2026-05-05T14:30:00Z');
    await pass(context, 200);
    await page.getByText('Time was lost').waitFor();
    expect(await drillView(page)).toMatchObject({ state: 'paused', pausedBy: 'gap' });
    await page.keyboard.press('KeyP');
    const record = await endOf(page);
    expect(outcomesOf(record)).toEqual(['held', 'unsure', 'held']);
    expect(record?.reps[1]?.heldMs).toBeLessThanOrEqual(2000);
    expect(faults).toEqual([]);
    await leave();
  });

  it('a clock that is set a day and an hour back in mid-hold changes nothing that was held', async () => {
    const { page, context, faults, leave } = await arrive('#/line', { timezoneId: 'Europe/Berlin' });
    await drillIntoSecondHold(page, '2026-05-05T06:30:00Z');
    await context.clock.setSystemTime('2026-05-04T05:30:00Z');
    const record = await endOf(page);
    expect(outcomesOf(record)).toEqual(allHeld);
    expect(record?.reps.map(({ heldMs }) => heldMs)).toEqual([HOLD_MS, HOLD_MS, HOLD_MS]);
    expect(record).toMatchObject({ date: '2026-05-05', durationMs: 10_000 + 3 * 7000 + 2 * 1000 });
    expect(Date.parse(record?.endedAt ?? '') - Date.parse(record?.startedAt ?? '')).toBe(record?.durationMs);
    expect(faults).toEqual([]);
    await leave();
  });

  it.each([
    ['spring', '2026-03-29T00:59:20Z', '2026-03-29T01:59', '+01:00', '03:'],
    ['autumn', '2026-10-25T00:59:20Z', '2026-10-25T02:59', '+02:00', '02:'],
  ])(
    'the hour of the %s is changed in mid-session: held to the millisecond, on the same day',
    async (_, at, wall, offset, after) => {
      const { page, context, faults, leave } = await arrive('#/line', { timezoneId: 'Europe/Berlin' });
      await drillIntoSecondHold(page, at);
      const record = await endOf(page);
      const seen = await page.evaluate(() => new Date().toTimeString().slice(0, 3));
      expect(seen).toBe(after);
      expect(outcomesOf(record)).toEqual(allHeld);
      expect(record?.date).toBe(wall.slice(0, 10));
      expect(record?.startedAt).toMatch(new RegExp(`^${wall}.*\\${offset}$`));
      expect(Date.parse(record?.endedAt ?? '') - Date.parse(record?.startedAt ?? '')).toBe(33_000);
      await page.goto(`${page.url().split('#')[0]}#/journal`);
      await page.getByText(wall.slice(11, 13).replace(/^0/, '')).first().waitFor();
      await context.clock.fastForward(1);
      expect(faults).toEqual([]);
      await leave();
    },
  );

  it('an archer who travels to yesterday in mid-session keeps the drill, and today is where the archer is', async () => {
    const { page, context, faults, leave } = await arrive('#/line');
    const cdp = await context.newCDPSession(page);
    await cdp.send('Emulation.setTimezoneOverride', { timezoneId: 'Europe/Berlin' });
    await drillIntoSecondHold(page, '2026-05-05T05:30:00Z');
    await cdp.send('Emulation.setTimezoneOverride', { timezoneId: 'America/Los_Angeles' });
    const record = await endOf(page);
    expect(outcomesOf(record)).toEqual(allHeld);
    expect(record).toMatchObject({ date: '2026-05-05' });
    expect(record?.startedAt).toContain('+02:00');
    await page.reload();
    await page.getByText('Monday 4 May').first().waitFor();
    await page.goto(`${page.url().split('#')[0]}#/journal`);
    await page.locator('lark-drill-entry').waitFor();
    expect(await page.locator('lark-drill-entry').count()).toBe(1);
    expect(faults).toEqual([]);
    await leave();
  });

  it('a page that is left open, and seen, over midnight is of the new day', async () => {
    const { page, context, leave } = await arrive('#/line', { timezoneId: 'Europe/Berlin' });
    await standStill(context, Date.parse('2026-05-05T21:00:00Z'));
    await page.reload();
    await page.getByText('Tuesday 5 May').first().waitFor();
    await context.clock.fastForward(2 * 3_600_000);
    await page.getByText('Wednesday 6 May').first().waitFor();
    await leave();
  });

  // Four hours of looks are drilled in packages/runner/src/drill-controller.test.ts, where a look costs next to nothing.
  it('a session of half an hour is held to the millisecond, and all of it is on the disk', async () => {
    const { page, context, faults, leave } = await arrive('#/line');
    await standStill(context);
    const file = JSON.parse(holdsFile(180, 8));
    file.blocks[0].rest.seconds = 60;
    await takeProgram(page, JSON.stringify(file));
    await page.getByRole('button', { name: 'Begin' }).click();
    await page.locator('lark-drill').waitFor();
    await pass(context, 31 * 60_000);
    const record = await endOf(page);
    expect(record?.reps.map(({ outcome, heldMs }) => [outcome, heldMs])).toEqual(Array(8).fill(['held', 180_000]));
    expect(record?.durationMs).toBe(10_000 + 8 * 181_000 + 7 * 60_000);
    expect(faults).toEqual([]);
    await leave();
  });
});
