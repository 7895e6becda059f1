import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, describe, expect, inject, it } from 'vitest';
import { arrive, leaveAll } from './archer.ts';
import { holdsFile, takeProgram } from './drill-program.ts';
import { drillView, pass, passToHold, passUntil, standStill } from './fast-time.ts';
import { startKillable } from './killable-browser.ts';
import { PATIENCE_MS } from './patience.ts';
import { drillKept, outcomesOf, storedDrills } from './stored-rows.ts';

afterAll(leaveAll);

const HOLD_MS = 3000;

/** Drills until some way into the hold after some reps, and lets what was written reach the disk. */
async function drillToHold(page: Page, rep: number): Promise<void> {
  await standStill(page.context());
  await page.keyboard.press('Space');
  await page.locator('lark-drill').waitFor();
  for (let ended = 0; ended < rep; ended++) {
    await passToHold(page);
    await pass(page.context(), HOLD_MS);
  }
  await passToHold(page);
  await pass(page.context(), 600);
  await drillKept(page);
}

/** What the next start shows, and what it leaves when the drill is closed. */
async function closeIt(page: Page) {
  const notice = page.getByRole('group', { name: 'Interrupted drill' });
  await notice.getByRole('button', { name: 'Go on with it' }).waitFor();
  const said = await notice.textContent();
  await notice.getByRole('button', { name: 'Close it' }).click();
  await notice.waitFor({ state: 'detached' });
  return { said, drills: await storedDrills(page) };
}

describe.concurrent('a drill that is cut off in the middle of a hold', () => {
  it.each(['the tab is closed', 'the page crashes'])('loses nothing when %s', async (how) => {
    const { page, context, leave } = await arrive('#/line');
    await takeProgram(page, holdsFile(HOLD_MS / 1000, 3));
    await drillToHold(page, 1);
    if (how === 'the tab is closed') await page.close();
    else {
      const crashed = page.waitForEvent('crash');
      const cdp = await context.newCDPSession(page);
      cdp.send('Page.crash').catch(() => {}); // a page that is gone gives no answer
      await crashed;
    }
    const next = await context.newPage();
    await next.goto(`${inject('address')}#/line`);
    const { said, drills } = await closeIt(next);
    expect(said).toContain('What you did up to rep 1 is logged');
    expect(drills).toHaveLength(1);
    expect(outcomesOf(drills[0])).toEqual(['held', 'unsure']);
    expect(drills[0]?.reps[0]?.heldMs).toBe(HOLD_MS);
    expect(drills[0]?.open).toBeUndefined();
    await leave();
  });

  it('goes on with the rep after the one that nobody can vouch for', async () => {
    const { page, context, leave } = await arrive('#/line');
    await takeProgram(page, holdsFile(HOLD_MS / 1000, 3));
    await drillToHold(page, 1);
    await page.close();
    const next = await context.newPage();
    await next.goto(`${inject('address')}#/line`);
    await next.getByRole('button', { name: 'Go on with it' }).click();
    await next.getByRole('button', { name: 'Resume' }).click();
    await passUntil(context, next.getByText('How was it?'));
    const drills = await storedDrills(next);
    expect(drills).toHaveLength(1);
    expect(outcomesOf(drills[0])).toEqual(['held', 'unsure', 'held']);
    await leave();
  });

  it('is closed by itself when another is begun', async ({ expect }) => {
    const { page, context, leave } = await arrive('#/line');
    await takeProgram(page, holdsFile(HOLD_MS / 1000, 3));
    await drillToHold(page, 0);
    await page.close();
    const next = await context.newPage();
    await next.goto(`${inject('address')}#/line`);
    await next.getByRole('button', { name: 'Begin' }).click();
    await next.locator('lark-drill').waitFor();
    await expect.poll(async () => (await drillView(next))?.state, { timeout: PATIENCE_MS }).toBe('running');
    await passToHold(next);
    expect((await drillView(next))?.progress.rep).toBe(0);
    await drillKept(next);
    const [first] = await storedDrills(next);
    expect(outcomesOf(first)).toEqual(['unsure']);
    expect(first?.open).toBeUndefined();
    await leave();
  });
});

it.concurrent('a drill survives the kill of the whole browser', async () => {
  const profile = mkdtempSync(join(tmpdir(), 'larkhold-profile-'));
  const first = await startKillable(profile);
  const page = await first.context.newPage();
  await page.goto(`${inject('address')}#/line`);
  await takeProgram(page, holdsFile(HOLD_MS / 1000, 3));
  await drillToHold(page, 1);
  await first.kill();

  const second = await startKillable(profile);
  const again = await second.context.newPage();
  await again.goto(`${inject('address')}#/line`);
  const { drills } = await closeIt(again);
  expect(outcomesOf(drills[0])).toEqual(['held', 'unsure']);
  await second.kill();
  rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
});
