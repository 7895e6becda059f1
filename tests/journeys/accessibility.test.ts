import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { arrive, leaveAll } from './archer.ts';
import { holdsFile, phase, takeProgram } from './drill-program.ts';
import { unfold } from './every-page.ts';
import { loadDemo, stillScreens } from './every-screen.ts';
import { axeFaults, forcedFaults, motionFaults, spillFaults } from './page-checks.ts';

afterAll(leaveAll);

const desk = { width: 1280, height: 900 };
/** WCAG 2.2, 1.4.10: 320 CSS pixels, which is a desk of 1280 at 400 %. */
const narrow = { width: 320, height: 640 };
/** The desk at 200 %. */
const halved = { width: 640, height: 450 };
/** WCAG 2.2, 1.4.4: text alone twice as large, on a phone. */
const phone = { width: 390, height: 844 };
const themes = ['dark', 'light'] as const;

/** Two frames, so that what hears of a new size has drawn. */
const settle = (page: Page) =>
  page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));

async function enlargeText(page: Page, size: string): Promise<void> {
  await page.evaluate((value) => {
    document.documentElement.style.fontSize = value;
  }, size);
}

/** Every look a person may need of one screen. The page is left as it was. */
async function otherLooks(page: Page): Promise<string[]> {
  const faults: string[] = [];
  const note = (look: string, found: string[]) => faults.push(...found.map((fault) => `${look}: ${fault}`));
  for (const [look, size] of [
    ['320 px wide', narrow],
    ['at 200 %', halved],
  ] as const) {
    await page.setViewportSize(size);
    await settle(page);
    note(look, await spillFaults(page));
  }
  await page.setViewportSize(phone);
  await enlargeText(page, '200%');
  await settle(page);
  note('text at 200 %', await spillFaults(page));
  await enlargeText(page, '');
  await page.setViewportSize(desk);
  await page.emulateMedia({ forcedColors: 'active', reducedMotion: 'reduce' });
  await settle(page);
  note('forced colours', await forcedFaults(page));
  note('reduced motion', await motionFaults(page));
  await page.emulateMedia({ forcedColors: 'none', reducedMotion: 'no-preference' });
  return faults;
}

describe.concurrent('every screen', { timeout: 240_000 }, () => {
  it.each(themes)('can be used by everyone, %s', async (colorScheme) => {
    const { page, faults, leave } = await arrive('#/kit', { colorScheme, viewport: desk });
    await loadDemo(page);
    const found: string[] = [];
    for (const { name, reach } of stillScreens) {
      await reach(page);
      await unfold(page, 2);
      const looks = colorScheme === 'dark' ? await otherLooks(page) : [];
      found.push(...[...(await axeFaults(page)), ...looks].map((fault) => `${name}: ${fault}`));
    }
    expect(found).toEqual([]);
    expect(faults).toEqual([]);
    await leave();
  });

  it.each(themes)('of a drill can be used by everyone, %s', async (colorScheme) => {
    const { page, faults, leave } = await arrive('#/rack', { colorScheme, viewport: desk });
    const found: string[] = [];
    const examine = async (name: string) => {
      const looks = await otherLooks(page);
      found.push(...[...(await axeFaults(page)), ...looks].map((fault) => `${name}: ${fault}`));
    };
    await takeProgram(page, holdsFile(120, 2));
    await page.keyboard.press('Enter');
    await phase(page, 'Hold').waitFor({ timeout: 30_000 });
    await examine('hold');
    await page.keyboard.press('Escape');
    await page.getByText('Stop the drill?').waitFor();
    await examine('asking whether to stop');
    await page.reload();
    await page.getByRole('group', { name: 'Interrupted drill' }).waitFor();
    await examine('an interrupted drill');
    await page.getByRole('button', { name: 'Go on with it' }).click();
    await page.getByRole('button', { name: 'Resume' }).waitFor();
    await examine('paused');
    await page.keyboard.press('Escape');
    await page.getByText('Stop the drill?').waitFor();
    await page.waitForTimeout(400); // a second press within 300 ms would be taken for a bounce
    await page.keyboard.press('Escape');
    await page.getByText('How was it?').waitFor();
    await examine('after the drill');
    await page.getByRole('button', { name: 'Skip', exact: true }).click();
    await page.getByRole('heading', { name: 'Logged' }).waitFor();
    await examine('what was logged');
    expect(found).toEqual([]);
    expect(faults).toEqual([]);
    await leave();
  });
});
