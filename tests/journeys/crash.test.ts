import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, describe, expect, inject, it } from 'vitest';
import { chromiumFlags, findChromium } from '../../scripts/find-chromium.mjs';
import { arrive, leaveAll } from './archer.ts';
import { holdsFile, phase, takeProgram } from './drill-program.ts';
import { outcomesOf, storedDrills } from './stored-rows.ts';

afterAll(leaveAll);

/** Drills until the given hold is under way. */
async function drillToHold(page: Page, rep: number): Promise<void> {
  await page.keyboard.press('Space');
  for (let ended = 0; ended < rep; ended++) {
    await phase(page, 'Hold').waitFor({ timeout: 30_000 });
    await phase(page, 'Let down').waitFor({ timeout: 30_000 });
  }
  await phase(page, 'Hold').waitFor({ timeout: 30_000 });
  await page.waitForTimeout(600);
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

// Side by side: they mostly wait.
describe.concurrent('a drill that is cut off in the middle of a hold', () => {
  it.each(['the tab is closed', 'the page crashes'])('loses nothing when %s', async (how) => {
    const { page, context, leave } = await arrive('#/line');
    await takeProgram(page, holdsFile(3, 3));
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
    expect(drills[0]?.reps[0]?.heldMs).toBe(3000);
    expect(drills[0]?.open).toBeUndefined();
    await leave();
  });

  it('goes on with the rep after the one that nobody can vouch for', async () => {
    const { page, context, leave } = await arrive('#/line');
    await takeProgram(page, holdsFile(3, 3));
    await drillToHold(page, 1);
    await page.close();
    const next = await context.newPage();
    await next.goto(`${inject('address')}#/line`);
    await next.getByRole('button', { name: 'Go on with it' }).click();
    await next.getByRole('button', { name: 'Resume' }).click();
    await next.getByText('How was it?').waitFor({ timeout: 40_000 });
    const drills = await storedDrills(next);
    expect(drills).toHaveLength(1);
    expect(outcomesOf(drills[0])).toEqual(['held', 'unsure', 'held']);
    await leave();
  });

  it('is closed by itself when another is begun', async () => {
    const { page, context, leave } = await arrive('#/line');
    await takeProgram(page, holdsFile(3, 3));
    await drillToHold(page, 0);
    await page.close();
    const next = await context.newPage();
    await next.goto(`${inject('address')}#/line`);
    await next.getByRole('button', { name: 'Begin' }).click();
    await phase(next, 'Hold').waitFor({ timeout: 30_000 });
    const [first] = await storedDrills(next);
    expect(outcomesOf(first)).toEqual(['unsure']);
    expect(first?.open).toBeUndefined();
    await leave();
  });
});

/** A browser of its own that can be killed like a machine that loses power. */
async function startKillable(profile: string): Promise<{ browser: Browser; child: ChildProcess; page: Page }> {
  const path = findChromium();
  if (!path) throw new Error('no Chromium found');
  const flags = [
    ...chromiumFlags,
    ...['--headless=new', '--remote-debugging-port=0', `--user-data-dir=${profile}`, 'about:blank'],
  ];
  // In a process group of its own, so that all of the browser's processes die at once, as by a power cut.
  const child = spawn(path, flags, { detached: true });
  const address = await new Promise<string>((resolve, reject) => {
    let said = '';
    child.stderr?.on('data', (chunk) => {
      said += String(chunk);
      const found = /DevTools listening on (\S+)/.exec(said)?.[1];
      if (found) resolve(found);
    });
    child.on('exit', () => reject(new Error(said)));
  });
  const browser = await chromium.connectOverCDP(address);
  const page = await browser.contexts()[0]?.newPage();
  if (!page) throw new Error('the browser has no context');
  return { browser, child, page };
}

async function killAll(child: ChildProcess): Promise<void> {
  const gone = new Promise((resolve) => child.once('exit', resolve));
  if (child.pid) process.kill(-child.pid, 'SIGKILL');
  await gone;
}

it.concurrent('a drill survives the kill of the whole browser', async () => {
  const profile = mkdtempSync(join(tmpdir(), 'larkhold-profile-'));
  const first = await startKillable(profile);
  await first.page.goto(`${inject('address')}#/line`);
  await takeProgram(first.page, holdsFile(3, 3));
  await drillToHold(first.page, 1);
  await killAll(first.child);

  const second = await startKillable(profile);
  await second.page.goto(`${inject('address')}#/line`);
  const { drills } = await closeIt(second.page);
  expect(outcomesOf(drills[0])).toEqual(['held', 'unsure']);
  await killAll(second.child);
  rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
});
