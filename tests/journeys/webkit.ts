import { spawn } from 'node:child_process';
import { setTimeout as sleep } from 'node:timers/promises';
import { findWebkit } from '../../scripts/find-webkit.mjs';
import { freePort } from '../free-port.ts';

const WAIT_MS = 60_000;

/** A WebKitGTK with a page open, driven over WebDriver by plain HTTP. */
export interface ThirdBrowser {
  version: string;
  /** Runs a function in the page. */
  run<T>(work: (...args: string[]) => T, ...args: string[]): Promise<T>;
  /** Waits until a function in the page says yes. */
  until(isSo: (...args: string[]) => boolean, ...args: string[]): Promise<void>;
  load(address: string): Promise<void>;
  reload(): Promise<void>;
  leave(): Promise<void>;
}

/**
 * Starts WebKitGTK's small browser on a screen of its own, in a fresh profile.
 * @param env what its surroundings say besides ours: `LANG`
 * @returns it; undefined where none is installed
 * @source W3C, WebDriver, "new session", "execute script"; WebKit, WebKitWebDriver's `webkitgtk:browserOptions`
 */
export async function openWebkit(env: Record<string, string> = {}): Promise<ThirdBrowser | undefined> {
  const found = findWebkit();
  if (!found) return undefined;
  const port = await freePort();
  const driver = spawn(found.screen, ['-a', found.driver, `--port=${port}`], {
    // A process group of its own: the screen, the driver and the browser end together.
    ...{ detached: true, stdio: 'ignore' },
    env: { ...process.env, WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: '1', ...env },
  });
  const ask = async (method: string, path: string, body?: object): Promise<unknown> => {
    const answer = await fetch(`http://127.0.0.1:${port}${path}`, {
      method,
      ...(body ? { body: JSON.stringify(body), headers: { 'Content-Type': 'application/json' } } : {}),
    });
    const { value } = (await answer.json()) as { value: unknown };
    if (!answer.ok) throw new Error(`WebDriver ${path}: ${JSON.stringify(value)}`);
    return value;
  };
  const end = (): void => {
    if (driver.pid !== undefined && driver.exitCode === null) process.kill(-driver.pid, 'SIGTERM');
  };
  try {
    await untilAnswers(() => ask('GET', '/status'));
    const browserOptions = { binary: found.browser, args: ['--automation'] };
    const session = (await ask('POST', '/session', {
      capabilities: { alwaysMatch: { 'webkitgtk:browserOptions': browserOptions } },
    })) as { sessionId: string; capabilities: { browserName: string; browserVersion: string } };
    const at = `/session/${session.sessionId}`;
    const run = async <T>(work: (...args: string[]) => T, ...args: string[]) =>
      (await ask('POST', `${at}/execute/sync`, { script: `return (${work})(...arguments)`, args })) as T;
    return {
      version: `${session.capabilities.browserName} ${session.capabilities.browserVersion}`,
      run,
      async until(isSo, ...args) {
        for (const endAt = Date.now() + WAIT_MS; Date.now() < endAt; await sleep(100)) {
          if (await run(isSo, ...args)) return;
        }
        throw new Error(`waited in vain for ${isSo} ${args}`);
      },
      load: async (url) => void (await ask('POST', `${at}/url`, { url })),
      reload: async () => void (await ask('POST', `${at}/refresh`, {})),
      async leave() {
        await ask('DELETE', at).catch(() => undefined);
        end();
      },
    };
  } catch (error) {
    end();
    throw error;
  }
}

async function untilAnswers(ask: () => Promise<unknown>): Promise<void> {
  for (const endAt = Date.now() + WAIT_MS; ; await sleep(100)) {
    try {
      await ask();
      return;
    } catch (error) {
      if (Date.now() > endAt) throw error;
    }
  }
}
