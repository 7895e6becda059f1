import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { pass, standStill } from '../journeys/fast-time.ts';
import { type KillableBrowser, startKillable } from '../journeys/killable-browser.ts';
import { drillKept } from '../journeys/stored-rows.ts';

/** The ways a page can end. */
export const deaths = ['tab closed', 'page crashed', 'reloaded', 'browser killed'] as const;
export type Death = (typeof deaths)[number];

/** What the page holds, once what is no longer needed was thrown away. */
export interface PageSize {
  heapMb: number;
  nodes: number;
  listeners: number;
}

/** One archer's browser on a profile of its own, and a clock that stands still unless it is moved. */
export class SoakedBrowser {
  readonly #address: string;
  readonly #profile = mkdtempSync(join(tmpdir(), 'larkhold-soak-'));
  readonly faults: string[] = [];
  #browser!: KillableBrowser;
  #page!: Page;
  #nowMs: number;

  private constructor(address: string, nowMs: number) {
    this.#address = address;
    this.#nowMs = nowMs;
  }

  /**
   * Starts the browser with the app open.
   * @param address where the app is served
   * @param nowMs milliseconds since 1970, where the clock begins
   */
  static async start(address: string, nowMs: number): Promise<SoakedBrowser> {
    const soaked = new SoakedBrowser(address, nowMs);
    await soaked.#boot();
    return soaked;
  }

  get page(): Page {
    return this.#page;
  }

  get nowMs(): number {
    return this.#nowMs;
  }

  /** Moves the clock as a living page would see it, in steps. */
  async pass(ms: number): Promise<void> {
    await pass(this.#browser.context, ms);
    this.#nowMs += ms;
  }

  /** Moves the clock in one jump, as a machine that slept. */
  async jump(ms: number): Promise<void> {
    await this.#browser.context.clock.fastForward(ms);
    this.#nowMs += ms;
  }

  /** Moves the wall clock alone, as a machine whose page clock stops while it sleeps. */
  async jumpWall(ms: number): Promise<void> {
    this.#nowMs += ms;
    await this.#browser.context.clock.setSystemTime(this.#nowMs);
  }

  /** Goes to a page of the app. */
  async go(hash: string, page = this.#page): Promise<void> {
    await page.goto(`${this.#address}${hash}`);
    await page.locator('main h1').first().waitFor();
  }

  /** Another tab of the same browser. */
  async openTab(hash: string): Promise<Page> {
    const page = await this.#browser.context.newPage();
    page.on('pageerror', (error) => this.faults.push(error.message));
    await page.setViewportSize({ width: 390, height: 844 });
    await this.go(hash, page);
    return page;
  }

  /**
   * Ends the page in mid-hold, and opens the app again.
   * @param knownMs how much of the hold is on the disk by then
   */
  async die(how: Death, knownMs: number): Promise<void> {
    await drillKept(this.#page, knownMs);
    if (how === 'browser killed') {
      await this.#browser.kill();
      return this.#boot();
    }
    if (how === 'reloaded') {
      await this.#page.reload();
      await this.#page.locator('main h1').first().waitFor();
      return;
    }
    if (how === 'page crashed') {
      const crashed = this.#page.waitForEvent('crash');
      const cdp = await this.#browser.context.newCDPSession(this.#page);
      cdp.send('Page.crash').catch(() => {}); // a page that is gone gives no answer
      await crashed;
    }
    await this.#page.close();
    this.#page = await this.openTab('#/line');
  }

  /**
   * The host has lost a part of the app, and so has the browser's cache.
   * @param part the beginning of its file's name
   * @returns brings it back
   */
  async losePart(part: string): Promise<() => Promise<void>> {
    const { context } = this.#browser;
    const cdp = await context.newCDPSession(this.#page);
    await cdp.send('Network.enable');
    await cdp.send('Network.setBypassServiceWorker', { bypass: true });
    const where = new RegExp(`/assets/${part}-[^/]*\\.js$`);
    await context.route(where, (route) => route.fulfill({ status: 404, body: 'not here' }));
    // A part that a page has loaded stays in it.
    await this.#page.reload();
    await this.#page.locator('main h1').first().waitFor();
    return async () => {
      await context.unroute(where);
      await cdp.detach();
    };
  }

  /** Every write from now on finds no room. */
  async fillDisk(): Promise<void> {
    await this.#page.evaluate(() => {
      const put = IDBObjectStore.prototype.put;
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
      Object.assign(window, { makeRoom: () => Object.assign(IDBObjectStore.prototype, { put }) });
    });
  }

  /** Takes `fillDisk` back. */
  async makeRoom(): Promise<void> {
    await this.#page.evaluate(() => (window as unknown as { makeRoom(): void }).makeRoom());
  }

  /** What the page holds at the line, where every day begins. */
  async size(): Promise<PageSize> {
    await this.go('#/line');
    const cdp = await this.#browser.context.newCDPSession(this.#page);
    // Twice: what the first finds to be free may free more.
    await cdp.send('HeapProfiler.collectGarbage');
    await cdp.send('HeapProfiler.collectGarbage');
    const { usedSize } = await cdp.send('Runtime.getHeapUsage');
    const { nodes, jsEventListeners } = await cdp.send('Memory.getDOMCounters');
    await cdp.detach();
    return { heapMb: Math.round(usedSize / 104_857.6) / 10, nodes, listeners: jsEventListeners };
  }

  async leave(): Promise<void> {
    await this.#browser.kill();
    rmSync(this.#profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  }

  async #boot(): Promise<void> {
    this.#browser = await startKillable(this.#profile, 'Europe/Berlin');
    this.#nowMs = await standStill(this.#browser.context, this.#nowMs);
    this.#page = await this.openTab('#/line');
  }
}
