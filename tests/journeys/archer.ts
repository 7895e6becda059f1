import type { Browser, BrowserContext, Page } from 'playwright-core';
import { inject } from 'vitest';
import { launchChromium } from '../../scripts/browser.mjs';

/** One archer's browser: a profile of its own, and everything that went wrong on its pages. */
export interface Archer {
  page: Page;
  context: BrowserContext;
  /** Errors, refused scripts and requests to elsewhere, as they happened. */
  faults: string[];
  leave(): Promise<void>;
}

let browser: Promise<Browser> | undefined;

/**
 * Opens the app in a fresh profile.
 * @param path where in the app, '#/rack'
 * @param address where it is served
 * @returns the archer; every request that leaves the served address counts as a fault
 */
export async function arrive(
  path = '',
  options: Parameters<Browser['newContext']>[0] = {},
  address = inject('address'),
): Promise<Archer> {
  browser ??= launchChromium();
  const context = await (await browser).newContext({
    viewport: { width: 390, height: 844 },
    locale: 'en-GB',
    ...options,
  });
  const page = await context.newPage();
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text());
  });
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(address) && !/^(data|blob):/.test(url)) faults.push(`asked for ${url}`);
  });
  await page.goto(`${address}${path}`);
  return { page, context, faults, leave: () => context.close() };
}

/** Closes the browser that all archers of a file share. */
export async function leaveAll(): Promise<void> {
  await (await browser)?.close();
  browser = undefined;
}
