import { readFile } from 'node:fs/promises';
import { deflateRawSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { afterAll, describe, expect, inject, it } from 'vitest';
import { arrive, leaveAll } from './archer.ts';
import { holdsFile } from './drill-program.ts';
import { axeFaults } from './page-checks.ts';

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

/** Opens a file with the rack's picker. */
async function pick(page: Page, text: string): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Open a program file' }).click(),
  ]);
  await chooser.setFiles({ name: 'a.drill.json', mimeType: 'application/json', buffer: Buffer.from(text) });
}

/** Takes the program for today, runs it to its end with one key, and reads how many holds it had. */
async function run(page: Page, title: string): Promise<number> {
  await page.goto(`${inject('address')}#/rack`);
  await page.getByRole('link', { name: title }).click();
  await page.getByRole('button', { name: 'Use today' }).click();
  await page.getByRole('link', { name: /On the line/ }).click();
  await page.getByRole('button', { name: 'Begin' }).waitFor();
  await page.keyboard.press('Enter');
  await page.getByText('How was it?').waitFor();
  const words = await page
    .locator('lark-after')
    .getByText(/of\s\d+\sreps? held/)
    .first()
    .textContent();
  return Number(/of\s(\d+)/.exec(words ?? '')?.[1]);
}

/** Packed by node's own zlib, not by the app. */
const linkOf = (text: string | Buffer) => `${inject('address')}#/open/${deflateRawSync(text).toString('base64url')}`;

describe.concurrent('the bench and sharing', () => {
  afterAll(leaveAll);

  it('builds a program of two blocks with the keyboard only, and gives it by file and by link to others who run it', async () => {
    const maker = await arrive('#/rack', { acceptDownloads: true });
    const { page } = maker;
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
    await write(page, 'A drill in one line', '1x1 hold 2 rest 1 draw 0.5 let down 0.5');
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

    const link = await page.getByRole('textbox', { name: 'Link' }).inputValue();
    await page.evaluate(() => Object.assign(window, { showSaveFilePicker: undefined }));
    await tabTo(page, 'Save as a file');
    const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')]);
    expect(download.suggestedFilename()).toBe('short-evening.drill.json');
    const fileText = await readFile(await download.path(), 'utf8');
    expect(JSON.parse(fileText).blocks).toHaveLength(2);
    expect(maker.faults).toEqual([]);
    await maker.leave();

    const byFile = async () => {
      const { page, faults, leave } = await arrive('#/rack');
      await pick(page, fileText);
      await page.getByRole('link', { name: 'Short evening' }).waitFor();
      // the same by link is known
      await page.goto(link);
      await page.getByText('This program is in the rack already.').waitFor();
      expect(await run(page, 'Short evening')).toBe(3);
      expect(faults).toEqual([]);
      await leave();
    };
    const byLink = async () => {
      const { page, faults, leave } = await arrive(new URL(link).hash);
      await page.getByRole('heading', { name: 'Short evening' }).waitFor();
      expect(await axeFaults(page)).toEqual([]);
      await page.getByRole('link', { name: 'Not now' }).click();
      await page.getByRole('link', { name: 'Club starter' }).waitFor();
      expect(await page.getByRole('link', { name: 'Short evening' }).count()).toBe(0);
      await page.goto(link);
      await page.getByRole('button', { name: 'Add to the rack' }).click();
      await page.getByRole('button', { name: 'Use today' }).waitFor();
      expect(await run(page, 'Short evening')).toBe(3);
      expect(faults).toEqual([]);
      await leave();
    };
    await Promise.all([byFile(), byLink()]);
  });

  it('pastes a link or a program onto the rack', async () => {
    const { page, faults, leave } = await arrive('#/rack');
    const text = holdsFile(2, 1, 'Attic evening');
    const paste = (words: string) =>
      page.evaluate((pasted) => {
        const clipboardData = new DataTransfer();
        clipboardData.setData('text/plain', pasted);
        window.dispatchEvent(new ClipboardEvent('paste', { clipboardData }));
      }, words);
    await page.getByRole('heading', { name: 'Rack' }).waitFor();
    await paste('bread and milk');
    await page.getByText('That is neither a program nor a link to one.').waitFor();
    await paste(text);
    await page.getByRole('link', { name: 'Attic evening' }).waitFor();
    await paste(linkOf(text));
    await page.getByText('From a link').waitFor();
    expect(faults).toEqual([]);
    await leave();
  });

  it('opens a file that the system hands to the installed app', async () => {
    const manifest = await (await fetch(`${inject('address')}manifest.webmanifest`)).json();
    expect(manifest.file_handlers).toEqual([
      { action: './#/rack', accept: { 'application/json': ['.drill.json', '.json'] } },
    ]);
    // No headless browser installs an app: the queue is played, and the app is the built one.
    const { page, faults, leave } = await arrive('#/kit', {
      before: () => {
        let toldConsumer: ((params: object) => void) | undefined;
        Object.defineProperty(window, 'launchQueue', {
          value: {
            setConsumer: (consumer: (params: object) => void) => {
              toldConsumer = consumer;
            },
            open: (...texts: (string | null)[]) =>
              toldConsumer?.({
                files: texts.map((text) => ({
                  getFile: async () => {
                    if (text === null) throw new DOMException('moved', 'NotFoundError');
                    return new File([text], 'attic.drill.json');
                  },
                })),
              }),
          },
        });
      },
    });
    await page.getByRole('heading', { name: 'Kit' }).waitFor();
    await page.evaluate(
      (text) =>
        (window as unknown as { launchQueue: { open(...texts: unknown[]): void } }).launchQueue.open(null, text),
      holdsFile(2, 1, 'From the desktop'),
    );
    await page.getByRole('link', { name: 'From the desktop' }).waitFor();
    expect(faults).toEqual([]);
    await leave();
  });

  it('answers hostile links with words, runs nothing and keeps everything', async () => {
    const { page, faults, leave } = await arrive('#/rack');
    const good = linkOf(holdsFile(2, 1));
    const scripted = holdsFile(2, 1, '<img src=x onerror=alert(1)><script>alert(1)</script>');
    for (const [link, words] of [
      [linkOf('').replace(/open.*/, 'open/'), 'There is no program in this link'],
      [`${good}****`, 'characters in it that do not belong'],
      [good.slice(0, -40), 'cut off or was changed'],
      [linkOf(Buffer.alloc(100_000_000)), 'more than 1 MiB'],
      [linkOf('{"format":"larkhold/program","version":99}'), 'version 99'],
      [linkOf(scripted), '<img src=x onerror=alert(1)>'],
    ] as const) {
      await page.goto(link);
      await page.getByText(words).first().waitFor();
    }
    await page.goto(`${inject('address')}#/rack`);
    await page.getByRole('link', { name: 'Club starter' }).waitFor();
    expect(await page.getByRole('link', { name: /img/ }).count()).toBe(0);
    expect(faults).toEqual([]);
    await leave();
  });

  it.each(['dark', 'light'] as const)('fits a narrow page in the %s theme', async (colorScheme) => {
    const { page, faults, leave } = await arrive('#/bench/new', { colorScheme, viewport: { width: 320, height: 640 } });
    await page.getByRole('button', { name: 'Add a block' }).click();
    await page.getByRole('heading', { name: '2. New block' }).waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
    expect(await axeFaults(page)).toEqual([]);
    expect(faults).toEqual([]);
    await leave();
  });

  it('moves a block by drag, and takes it back', async () => {
    const { page, faults, leave } = await arrive('#/bench/new', { viewport: { width: 900, height: 2600 } });
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
    expect(faults).toEqual([]);
    await leave();
  });
});
