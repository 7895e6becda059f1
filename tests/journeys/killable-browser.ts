import { type ChildProcess, spawn } from 'node:child_process';
import { type Browser, type BrowserContext, chromium } from 'playwright-core';
import { chromiumFlags, findShell } from '../../scripts/find-chromium.mjs';
import { PATIENCE_MS } from './patience.ts';

/** A browser of its own that can be killed like a machine that loses power. */
export interface KillableBrowser {
  browser: Browser;
  /** The profile's own context, the one that is on the disk. */
  context: BrowserContext;
  /** Ends all of the browser's processes at once, in the middle of what they do. */
  kill(): Promise<void>;
}

/**
 * Starts a browser on a profile folder.
 * @param profile the folder; what was kept in it is there again
 * @param timeZone an IANA name; the machine's unless a test says otherwise
 * @returns the running browser
 */
export async function startKillable(profile: string, timeZone?: string): Promise<KillableBrowser> {
  const path = findShell();
  if (!path) throw new Error('no Chromium found');
  const flags = [
    ...chromiumFlags,
    ...['--headless=new', '--remote-debugging-port=0', `--user-data-dir=${profile}`, 'about:blank'],
  ];
  const env = timeZone === undefined ? process.env : { ...process.env, TZ: timeZone };
  // In a process group of its own, so that all of the browser's processes die at once, as by a power cut.
  const child = spawn(path, flags, { detached: true, env });
  const browser = await chromium.connectOverCDP(await addressOf(child));
  const [context] = browser.contexts();
  if (!context) throw new Error('the browser has no context');
  context.setDefaultTimeout(PATIENCE_MS);
  return { browser, context, kill: () => killAll(child) };
}

async function addressOf(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = '';
    child.stderr?.on('data', (chunk) => {
      said += String(chunk);
      const found = /DevTools listening on (\S+)/.exec(said)?.[1];
      if (found) resolve(found);
    });
    child.on('exit', () => reject(new Error(said)));
  });
}

async function killAll(child: ChildProcess): Promise<void> {
  const gone = new Promise((resolve) => child.once('exit', resolve));
  if (child.pid) process.kill(-child.pid, 'SIGKILL');
  await gone;
}
