import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { deflateRawSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { afterAll, describe, expect, inject, it } from 'vitest';
import { arrive, leaveAll } from './archer.ts';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** The page's own policy lets no foreign script in; an isolated evaluation is not one. */
async function axeFaults(page: Page): Promise<string[]> {
  await page.evaluate(axeSource);
  return page.evaluate(async () => {
    const { axe } = window as unknown as {
      axe: { run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
    };
    return (await axe.run()).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 120)}`);
  });
}

/** Goes by the tab key alone to a control of this name. */
async function tabTo(page: Page, name: string): Promise<void> {
  for (let step = 0; step < 80; step++) {
    const here = await page.evaluate(() => {
      let at = document.activeElement;
      while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
      if (at instanceof HTMLInputElement || at instanceof HTMLTextAreaElement || at instanceof HTMLSelectElement) {
        return at.labels?.[0]?.textContent ?? at.getAttribute('aria-label') ?? '';
      }
      return at?.textContent ?? '';
    });
    if (here.replace(/\s+/g, ' ').trim().startsWith(name)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`no control called ${name} can be reached by the tab key`);
}

async function write(page: Page, name: string, text: string): Promise<void> {
  await tabTo(page, name);
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type(text);
}

describe('the bench and sharing', () => {
  afterAll(leaveAll);
  let fileText = '';
  let link = '';

  it('builds a program of two blocks with the keyboard only and saves it', async () => {
    const { page, faults, leave } = await arrive('#/rack', { acceptDownloads: true });
    await page.getByRole('heading', { name: 'Rack' }).waitFor();
    await tabTo(page, 'New program');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Bench' }).waitFor();
    await write(page, 'Title', 'Short evening');
    await write(page, 'Block title', 'First');
    for (const [name, text] of [
      ['Reps', '2'],
      ['Draw', '0.5'],
      ['Hold', '1'],
      ['Let-down', '0.5'],
      ['Rest s', '1'],
    ] as const) {
      await write(page, name, text);
    }
    await write(page, 'Quick line', '1x1 hold 2 rest 1 draw 0.5 let down 0.5');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: '2. Holds' }).waitFor();
    // the focus is in the new block; its own Up button is the next stop
    await tabTo(page, 'Up');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: '1. Holds' }).waitFor();
    await page.keyboard.press('ControlOrMeta+z');
    await page.getByRole('heading', { name: '2. Holds' }).waitFor();
    expect(await axeFaults(page)).toEqual([]);

    // an unsaved draft is still there after a reload
    await page.reload();
    await page.getByRole('heading', { name: '2. Holds' }).waitFor();
    await write(page, 'Set rest', '1');
    await page.keyboard.press('ControlOrMeta+s');
    await page.getByRole('heading', { name: 'Short evening' }).waitFor();
    expect(await axeFaults(page)).toEqual([]);

    link = await page.getByRole('textbox', { name: 'Link' }).inputValue();
    await page.evaluate(() => Object.assign(window, { showSaveFilePicker: undefined }));
    await tabTo(page, 'Save as a file');
    const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')]);
    expect(download.suggestedFilename()).toBe('short-evening.drill.json');
    fileText = await readFile(await download.path(), 'utf8');
    expect(JSON.parse(fileText).blocks).toHaveLength(2);
    expect(faults).toEqual([]);
    await leave();
  });

  it('opens it in another profile by file, and again by link, and asks', async () => {
    const { page, faults, leave } = await arrive('#/rack');
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Open a program file' }).click(),
    ]);
    await chooser.setFiles({ name: 'a.drill.json', mimeType: 'application/json', buffer: Buffer.from(fileText) });
    await page.getByRole('link', { name: 'Short evening' }).waitFor();
    await page.goto(link);
    await page.getByText('This program is in the rack already.').waitFor();
    expect(faults).toEqual([]);
    await leave();
  });

  it('opens it in another profile by link, adds nothing until asked, and runs it', async () => {
    const { page, faults, leave } = await arrive('#/rack');
    await page.goto(link);
    await page.getByRole('heading', { name: 'Short evening' }).waitFor();
    expect(await axeFaults(page)).toEqual([]);
    await page.getByRole('link', { name: 'Not now' }).click();
    await page.getByRole('link', { name: 'Club starter' }).waitFor();
    expect(await page.getByRole('link', { name: 'Short evening' }).count()).toBe(0);
    await page.goto(link);
    await page.getByRole('button', { name: 'Add to the rack' }).click();
    await page.getByRole('button', { name: 'Take for today' }).click();
    await page.getByRole('link', { name: /to the line/ }).click();
    await page.getByRole('button', { name: 'Begin' }).waitFor();
    await page.keyboard.press('Enter');
    await page.getByText('How was it?').waitFor({ timeout: 60_000 });
    expect(await page.locator('lark-after li').count()).toBe(3);
    expect(faults).toEqual([]);
    await leave();
  });

  it('pastes a link or a program onto the rack', async () => {
    const { page, leave } = await arrive('#/rack');
    const paste = (text: string) =>
      page.evaluate((words) => {
        const clipboardData = new DataTransfer();
        clipboardData.setData('text/plain', words);
        window.dispatchEvent(new ClipboardEvent('paste', { clipboardData }));
      }, text);
    await page.getByRole('heading', { name: 'Rack' }).waitFor();
    await paste('bread and milk');
    await page.getByText('That is neither a program nor a link to one.').waitFor();
    await paste(fileText);
    await page.getByRole('link', { name: 'Short evening' }).waitFor();
    await paste(link);
    await page.getByText('From a link').waitFor();
    await leave();
  });

  it('answers hostile links with words, runs nothing and keeps everything', async () => {
    const { page, faults, leave } = await arrive('#/rack');
    const pack = (text: string | Buffer) => deflateRawSync(text).toString('base64url');
    const scripted = fileText.replaceAll('Short evening', '<img src=x onerror=alert(1)><script>alert(1)</script>');
    for (const [payload, words] of [
      ['', 'There is no program in this link'],
      ['****', 'signs in it that do not belong'],
      [link.split('/open/')[1]?.slice(0, -40) ?? '', 'cut off or was changed'],
      [pack(Buffer.alloc(100_000_000)), 'more than 1 MiB'],
      [pack('{"format":"larkhold/program","version":99}'), 'version 99'],
      [pack(scripted), '<img src=x onerror=alert(1)>'],
    ] as const) {
      await page.goto(`${inject('address')}#/open/${payload}`);
      await page.getByText(words).first().waitFor();
    }
    await page.goto(`${inject('address')}#/rack`);
    await page.getByRole('link', { name: 'Club starter' }).waitFor();
    expect(await page.getByRole('link', { name: /img/ }).count()).toBe(0);
    expect(faults).toEqual([]);
    await leave();
  });

  it('fits a narrow page and both themes, and moves a block by drag', async () => {
    for (const colorScheme of ['dark', 'light'] as const) {
      const { page, leave } = await arrive('#/bench/new', { colorScheme, viewport: { width: 320, height: 640 } });
      await page.getByRole('button', { name: 'Add a block' }).click();
      await page.getByRole('heading', { name: '2. New block' }).waitFor();
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
      expect(await axeFaults(page)).toEqual([]);
      await leave();
    }
    const { page, leave } = await arrive('#/bench/new', { viewport: { width: 900, height: 1800 } });
    await page.locator('#field-blocks-0-title').fill('Walker');
    await page.getByRole('button', { name: 'Add a block' }).click();
    const grips = page.locator('.grip');
    await grips.nth(1).waitFor();
    const [from, to] = [await grips.nth(0).boundingBox(), await grips.nth(1).boundingBox()];
    if (!from || !to) throw new Error('the grips are not drawn');
    await page.mouse.move(from.x + 20, from.y + 20);
    await page.mouse.down();
    await page.mouse.move(from.x + 20, from.y + 60, { steps: 5 });
    await page.mouse.move(to.x + 20, to.y + 200, { steps: 20 });
    await page.mouse.up();
    await page.getByRole('heading', { name: '2. Walker' }).waitFor();
    expect(await page.locator('.blocks > li h3').allTextContents()).toEqual(['1. New block', '2. Walker']);
    await page.keyboard.press('ControlOrMeta+z');
    await page.getByRole('heading', { name: '1. Walker' }).waitFor();
    expect(await page.locator('.blocks > li h3').allTextContents()).toEqual(['1. Walker', '2. New block']);
    await leave();
  });
});
