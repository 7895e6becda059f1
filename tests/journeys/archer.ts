import type { Browser, BrowserContext, Page } from 'playwright-core';
import { inject } from 'vitest';
import { launchChromium, launchShell } from '../../scripts/browser.mjs';
import { PATIENCE_MS } from './patience.ts';

/** One archer's browser: a profile of its own, and everything that went wrong on its pages. */
export interface Archer {
  page: Page;
  context: BrowserContext;
  /** Errors, refused scripts and requests to elsewhere, as they happened. */
  faults: string[];
  leave(): Promise<void>;
}

/** What is special about an archer's browser. */
type ArcherOptions = Parameters<Browser['newContext']>[0] & {
  /** Flags of Chromium; archers with the same flags share one. */
  flags?: readonly string[];
  /** The whole browser, not the one without windows: that one asks nobody for a camera or a microphone, and installs nothing. */
  whole?: boolean;
  /** Runs in each page before anything of the app does. */
  before?: () => void;
};

const browsers = new Map<string, Promise<Browser>>();

function browserWith(flags: readonly string[], whole: boolean): Promise<Browser> {
  const key = `${whole} ${flags.join(' ')}`;
  const running = browsers.get(key) ?? (whole ? launchChromium : launchShell)([...flags]);
  browsers.set(key, running);
  return running;
}

/**
 * Opens the app in a fresh profile. It is not kept for use without a network unless `serviceWorkers` is 'allow': keeping all of its
 * files is most of what a first load costs.
 * @param path where in the app, '#/rack'
 * @param options of the profile, and flags of the browser
 * @param address where it is served
 * @returns the archer; every request that leaves the served address counts as a fault
 */
export async function arrive(
  path = '',
  { flags = [], whole = false, before, ...options }: ArcherOptions = {},
  address = inject('address'),
): Promise<Archer> {
  const context = await (await browserWith(flags, whole)).newContext({
    viewport: { width: 390, height: 844 },
    locale: 'en-GB',
    serviceWorkers: 'block',
    ...options,
  });
  context.setDefaultTimeout(PATIENCE_MS);
  if (before) await context.addInitScript(before);
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

/** Closes the browsers that the archers of a file share. */
export async function leaveAll(): Promise<void> {
  const running = [...browsers.values()];
  browsers.clear();
  await Promise.all(running.map(async (browser) => (await browser).close()));
}
