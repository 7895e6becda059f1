import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import puppeteer, { type Page } from 'puppeteer-core';
import { findFirefox } from '../../scripts/find-firefox.mjs';
import { PATIENCE_MS } from './patience.ts';

/** A stock Firefox with the app open, driven over WebDriver BiDi. */
export interface SecondBrowser {
  page: Page;
  version: string;
  /** Errors, refused scripts and requests to elsewhere, as they happened. */
  faults: string[];
  /** Waits for an element by a selector whose parts reach through shadow roots. */
  wait(selector: string): Promise<void>;
  /** Presses an element, as a finger does. */
  press(selector: string): Promise<void>;
  /** Goes to a page of the app and waits until it is drawn. */
  go(hash: string): Promise<void>;
  /** Gives a file to the rack, as the system's window would. */
  giveToRack(text: string): Promise<void>;
  leave(): Promise<void>;
}

/**
 * Asks the page until it says yes. The driver's own way is a `Function`, which the app's policy refuses.
 * @param page the page
 * @param isSo asked in the page
 */
export async function until(page: Page, isSo: () => boolean): Promise<void> {
  for (const endAt = Date.now() + PATIENCE_MS; Date.now() < endAt; ) {
    if (await page.evaluate(isSo)) return;
    await new Promise((wait) => setTimeout(wait, 50));
  }
  throw new Error(`waited in vain for ${isSo}`);
}

/** Waits in the page until an element is where it was a picture ago: the driver presses a place, not an element. */
function standsStill(element: Element): Promise<void> {
  return new Promise((isStill) => {
    let before: DOMRect | undefined;
    const look = () => {
      const { x, y, width, height } = element.getBoundingClientRect();
      if (before?.x === x && before.y === y && before.width === width && before.height === height) return isStill();
      before = new DOMRect(x, y, width, height);
      requestAnimationFrame(look);
    };
    look();
  });
}

/**
 * Starts Firefox, headless, in a fresh profile.
 * @param address where the app is served
 * @returns it; undefined where none is installed
 */
export async function openFirefox(address: string): Promise<SecondBrowser | undefined> {
  const executablePath = findFirefox();
  if (!executablePath) return undefined;
  const browser = await puppeteer.launch({
    ...{ browser: 'firefox', executablePath, headless: true, defaultViewport: null },
    extraPrefsFirefox: { 'intl.accept_languages': 'en-GB' },
  });
  const page = await browser.newPage();
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(error instanceof Error ? error.message : String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text());
  });
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(address) && !/^(data|blob):/.test(url)) faults.push(`asked for ${url}`);
  });
  await page.goto(`${address}#/rack`);
  page.setDefaultTimeout(PATIENCE_MS);
  const wait = async (selector: string) => void (await page.waitForSelector(selector));
  await wait('>>> h1');
  const folder = mkdtempSync(join(tmpdir(), 'larkhold-firefox-'));
  return {
    ...{ page, faults, wait, version: await browser.version() },
    async press(selector) {
      const element = await page.waitForSelector(selector);
      await element?.evaluate(standsStill);
      await element?.click();
    },
    async go(hash) {
      await page.evaluate((to) => {
        location.hash = to;
      }, hash);
      // A page that is loaded when it is first opened is drawn a moment later.
      await until(page, () => {
        const place = document.querySelector('lark-app')?.shadowRoot?.querySelector('main > :last-child');
        return Boolean(place?.shadowRoot?.querySelector('h1'));
      });
    },
    async giveToRack(text) {
      const path = join(folder, 'holds.drill.json');
      writeFileSync(path, text);
      const field = await page.waitForSelector('>>> input[aria-label="Program file"]');
      await field?.toElement('input')?.then((input) => input.uploadFile(path));
    },
    async leave() {
      await browser.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
