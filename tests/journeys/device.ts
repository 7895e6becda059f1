import { readFile } from 'node:fs/promises';
import type { Browser, Page } from 'playwright-core';
import { PATIENCE_MS } from './patience.ts';

/** One archer's or coach's device: a browser profile of its own, with the app open. */
export interface Device {
  page: Page;
  /** Goes to a page of the app. */
  go(hash: string): Promise<void>;
  /** Presses what saves a file. @returns its text. */
  save(press: () => Promise<void>): Promise<string>;
  /** Gives a file to the file field with this name. */
  give(field: string, name: string, text: string): Promise<void>;
  close(): Promise<void>;
}

/**
 * Opens the app on a device of its own.
 * @param browser a running one
 * @param address where the app is served
 * @returns the device
 */
export async function openDevice(browser: Browser, address: string): Promise<Device> {
  const context = await browser.newContext({
    acceptDownloads: true,
    viewport: { width: 820, height: 1180 },
    locale: 'en-GB',
    serviceWorkers: 'block',
  });
  context.setDefaultTimeout(PATIENCE_MS);
  const page = await context.newPage();
  await page.goto(`${address}#/journal`);
  await page.getByRole('heading', { level: 1 }).waitFor();
  return {
    page,
    async go(hash) {
      await page.goto(`${address}${hash}`);
      await page.getByRole('heading', { level: 1 }).waitFor();
    },
    async save(press) {
      const [download] = await Promise.all([page.waitForEvent('download'), press()]);
      return readFile(await download.path(), 'utf8');
    },
    async give(field, name, text) {
      await page
        .locator(`input[type=file][aria-label="${field}"]`)
        .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
    },
    close: () => context.close(),
  };
}

/**
 * Saves the journal as another device gets it.
 * @param device whose
 * @returns the file's text
 */
export async function saveJournal(device: Device): Promise<string> {
  await device.go('#/files');
  const button = device.page.getByRole('button', { name: 'Journal, for another device' });
  return device.save(() => button.click());
}
