import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, describe, it } from 'vitest';
import { arrive, leaveAll } from './archer.ts';
import { holdsFile, phase } from './drill-program.ts';
import { everyPage, goTo } from './every-page.ts';
import { demoIds, handOverFile, loadDemo } from './every-screen.ts';
import { focusOf, LOST, press, tabAndPress, tabAndType, tabTo } from './keyboard.ts';

afterAll(leaveAll);

const file = (name: string, text: string) => ({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
const brokenFile = file('broken.drill.json', holdsFile(0, 0));

/** Chooses a file as the system's own window would, after the key that opens it. */
async function choose(page: Page, button: string | RegExp, chosen: ReturnType<typeof file>): Promise<void> {
  // Waited for from before the way there: a key is faster than the browser takes to hand its window over.
  const opened = page.waitForEvent('filechooser');
  await tabTo(page, button);
  await page.keyboard.press('Enter');
  await (await opened).setFiles(chosen);
}

/** Presses Enter where a file is saved, without the system's window. */
async function savedText(page: Page, button: string | RegExp): Promise<string> {
  await page.evaluate(() => Object.assign(window, { showSaveFilePicker: undefined }));
  await tabTo(page, button);
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')]);
  return readFile(await download.path(), 'utf8');
}

describe.concurrent('by keyboard alone', () => {
  it('the first stop skips to the page; every stop of every page shows itself and is not covered', async ({
    expect,
  }) => {
    const { page, faults, leave } = await arrive('#/rack');
    await page.getByRole('heading', { name: 'Rack' }).waitFor();
    await page.keyboard.press('Tab');
    expect(await focusOf(page)).toMatchObject({ name: 'Skip to the page' });
    await press(page, 'Enter');
    await page.keyboard.press('Tab');
    expect(await focusOf(page)).toMatchObject({ name: 'Files' });
    await loadDemo(page);
    const found: string[] = [];
    for (const hash of everyPage) {
      await goTo(page, hash, demoIds);
      const first: string[] = [];
      for (let stops = 0; stops < 45; stops += 1) {
        await page.keyboard.press('Tab');
        const { name, fault } = await focusOf(page);
        if (fault === LOST) break; // past the last stop, into the browser's own
        if (fault) found.push(`${hash}: ${fault}`);
        if (name === '') found.push(`${hash}: a stop without a name after ${first.at(-1)}`);
        first.push(name);
      }
      if (first.length === 0) found.push(`${hash}: no stop`);
    }
    expect(found).toEqual([]);
    expect(faults).toEqual([]);
    await leave();
  });

  it('a file is opened or refused, a drill is begun, let down, stopped, told about and corrected', async ({
    expect,
  }) => {
    const { page, faults, leave } = await arrive('#/rack');
    await page.getByRole('heading', { name: 'Rack' }).waitFor();
    await choose(page, 'Open a program file', brokenFile);
    await page.getByRole('dialog').waitFor();
    expect(await focusOf(page)).toMatchObject({ name: 'Close' });
    await press(page, 'Escape');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    expect(await focusOf(page)).toMatchObject({ name: 'Open a program file' });
    for (const round of ['new', 'like']) {
      await page.keyboard.press('Shift+Tab');
      await choose(page, 'Open a program file', file('holds.drill.json', holdsFile(20, 2)));
      if (round === 'like') {
        await page.getByRole('dialog').waitFor();
        await tabAndPress(page, 'Replace');
      }
      await page.getByText(/Attic holds\.$/).waitFor();
    }
    expect(await focusOf(page)).not.toMatchObject({ fault: expect.anything() });
    await tabAndPress(page, 'Use today: Attic holds');
    await tabAndPress(page, 'Line');
    await page.getByRole('heading', { name: 'Attic holds' }).waitFor();
    await expect.poll(async () => (await focusOf(page)).name).toBe('Begin');
    await press(page, 'Enter');
    await phase(page, 'Hold').waitFor();
    await press(page, 'Space');
    // The let-down and its rest may be over before a busy machine looks.
    await page.locator('lark-glance').getByText('rep 2 of 2').first().waitFor();
    await page.waitForTimeout(400); // a second press within 300 ms would count as a bounce
    await press(page, 'Escape');
    await page.getByText('Stop the drill?').waitFor();
    await tabAndPress(page, 'Keep going');
    await page.getByText('Stop the drill?').waitFor({ state: 'detached' });
    await page.waitForTimeout(400);
    await press(page, 'Escape');
    await page.waitForTimeout(400);
    await press(page, 'Escape');
    await page.getByText('How was it?').waitFor();
    await tabTo(page, /No effort/);
    await press(page, 'ArrowDown');
    await tabTo(page, 'No');
    await press(page, 'Space');
    await tabAndType(page, 'Note', 'Calm');
    await tabAndPress(page, 'Save');
    await page.getByRole('heading', { name: 'Logged' }).waitFor();
    await tabAndPress(page, 'See it in the journal');
    await page.getByRole('heading', { name: 'Journal' }).waitFor();
    await tabAndPress(page, 'Held');
    await page.getByText('Corrected.').waitFor();
    await tabAndPress(page, /^(Undo|Take it back)/);
    expect(faults).toEqual([]);
    await leave();
  });

  it('the day and the week are filled, handed over, and answered by a coach', async ({ expect }) => {
    const { page, faults, leave } = await arrive('#/week', { acceptDownloads: true });
    await page.getByLabel('Focus: the one thing worked on').waitFor();
    await tabAndType(page, 'Focus: the one thing worked on', 'Low front shoulder');
    await tabAndPress(page, 'Practice arrows: 6 more');
    await tabTo(page, 'Poor');
    await press(page, 'ArrowRight');
    await tabAndPress(page, 'Yes', 'Space');
    await page.getByText('Stop for today.').waitFor();
    await tabAndType(page, 'What went right', 'Steady holds');
    await tabAndPress(page, 'Files');
    await page.getByRole('heading', { name: 'Files' }).waitFor();
    await tabAndPress(page, 'Hand over to a coach');
    await tabAndType(page, 'Your name, as you call yourself', 'Ines');
    expect(JSON.parse(await savedText(page, 'Save the hand-over')).archer).toBe('Ines');

    await goTo(page, '#/coach', demoIds);
    await choose(page, 'Open hand-overs', file('ines.json', handOverFile));
    await page.getByRole('row', { name: /Ines/ }).waitFor();
    await tabAndType(page, 'Your name', 'Coach Ode');
    await tabAndType(page, 'Comment', 'Shorter holds.');
    expect(JSON.parse(await savedText(page, 'Save the answer')).answers).toHaveLength(1);
    expect(faults).toEqual([]);
    await leave();
  });

  it('a program is made and shared, rows removed on the way; the kit is changed and everything saved', async ({
    expect,
  }) => {
    const { page, faults, leave } = await arrive('#/rack', { acceptDownloads: true });
    await page.getByRole('heading', { name: 'Rack' }).waitFor();
    await tabAndPress(page, 'New program');
    await page.getByRole('heading', { name: 'Bench' }).waitFor();
    await tabAndType(page, 'Title', 'Short evening');
    await tabAndPress(page, 'Duplicate');
    await page.getByRole('heading', { name: /^2\./ }).waitFor();
    await tabAndPress(page, 'Remove');
    await page.getByRole('heading', { name: /^2\./ }).waitFor({ state: 'detached' });
    // A block without a ladder offers some at once: its fold is open.
    await tabAndPress(page, 'Write a ladder yourself');
    await tabAndPress(page, 'Add a rung');
    await tabAndPress(page, 'Remove rung 2');
    await press(page, 'ControlOrMeta+s');
    await page.getByRole('heading', { name: 'Short evening' }).waitFor();
    expect(JSON.parse(await savedText(page, 'Save as a file')).title).toBe('Short evening');

    await loadDemo(page, 'by keyboard');
    await tabAndPress(page, 'Remove the demo journal');
    await page.getByRole('button', { name: 'Load a demo journal' }).waitFor();
    await tabAndPress(page, 'Kit');
    await tabAndPress(page, /^Bow/);
    await tabTo(page, 'Drawing hand');
    await press(page, 'ArrowDown');
    await expect.poll(() => page.getByLabel('Drawing hand').inputValue()).toBe('left');
    await tabAndPress(page, 'Kit');
    await tabAndPress(page, /^Controls/);
    await tabTo(page, 'Learn');
    await press(page, 'Enter');
    await page.keyboard.press('k');
    await page.getByText('Heard: Key K.').waitFor();
    await press(page, 'Escape');
    expect(await focusOf(page)).toMatchObject({ name: 'Learn' });
    await tabAndPress(page, 'Kit');
    await tabAndPress(page, /^What is kept/);
    expect(JSON.parse(await savedText(page, 'Save everything as a file'))).toHaveProperty('kit');
    expect(faults).toEqual([]);
    await leave();
  });
});
