import type { SessionView } from '@larkhold/engine';
import type { BrowserContext, Locator, Page } from 'playwright-core';

/** How far one look at the clock may jump: no more than a drill with no sound takes for unnoticed, as real sound can't follow a fast clock. */
const stepMs = 1000;

/** A clock can only be stopped at a moment that is still to come, and a loaded machine may take its time. */
const toStopMs = 20_000;

/**
 * Makes the clock of all pages of a context stand still, so that only `pass` and `passUntil` move it. The leap there would be time in vain for an app
 * that still waits for its database on a busy machine, so it is open first.
 * @param at milliseconds since 1970; now unless a test says otherwise
 * @returns where it is
 */
export async function standStill(context: BrowserContext, at = Date.now()): Promise<number> {
  const isOpen = () => {
    const app: { app?: unknown } | null = document.querySelector('lark-app');
    return app === null || app.app !== undefined;
  };
  await Promise.all(context.pages().map((page) => page.waitForFunction(isOpen)));
  await context.clock.install({ time: at });
  await context.clock.pauseAt(at + toStopMs);
  return at + toStopMs;
}

/** The driver's own clock in a page. */
interface PageClock {
  controller: { fastForward(ms: number): Promise<void>; log(type: 'fastForward', at: number, ms: number): void };
}

/**
 * Moves the clock as a living page would see it, in steps. All but the last happen inside the pages: from here each would be several messages,
 * and one more script that every later page begins with.
 */
export async function pass(context: BrowserContext, ms: number): Promise<void> {
  if (ms <= 0) return;
  const steps = Math.ceil(ms / stepMs) - 1;
  if (steps > 0) await passInside(context, steps);
  await context.clock.fastForward(ms - steps * stepMs);
}

async function passInside(context: BrowserContext, steps: number): Promise<void> {
  const walk = async ([count, length]: readonly [number, number]) => {
    const { controller } = (globalThis as unknown as { __pwClock: PageClock }).__pwClock;
    for (let done = 0; done < count; done += 1) await controller.fastForward(length);
  };
  await Promise.all(context.pages().map((page) => page.evaluate(walk, [steps, stepMs] as const)));
  // A page that is opened later begins at the same moment.
  await context.addInitScript((ms) => {
    (globalThis as unknown as { __pwClock: PageClock }).__pwClock.controller.log('fastForward', Date.now(), ms);
  }, steps * stepMs);
}

/**
 * Moves the clock until something is on the screen.
 * @param limitMs milliseconds of fast time after which it gives up
 */
export async function passUntil(context: BrowserContext, shown: Locator, limitMs = 600_000): Promise<void> {
  for (let passed = 0; passed < limitMs && !(await shown.isVisible()); passed += stepMs) {
    await context.clock.fastForward(stepMs);
  }
  await shown.waitFor();
}

/** Where the drill on the line is; undefined where none is on the screen. */
export function drillView(page: Page): Promise<SessionView | undefined> {
  return page.evaluate(() => {
    const drill = document
      .querySelector('lark-app')
      ?.shadowRoot?.querySelector('lark-line')
      ?.shadowRoot?.querySelector('lark-drill') as { view?: unknown } | null | undefined;
    return drill?.view as SessionView | undefined;
  });
}

/**
 * Moves the clock to the very beginning of the next hold.
 * @param move how to move it, where somebody counts
 * @returns false where the drill is over, or no longer runs, before
 */
export async function passToHold(page: Page, move = (ms: number) => pass(page.context(), ms)): Promise<boolean> {
  for (let view = await drillView(page); view?.state === 'running'; view = await drillView(page)) {
    if (view.step?.kind === 'hold' && view.step.startMs === Math.floor(view.offsetMs)) return true;
    await move(Math.max(1, Math.ceil(view.msLeft)));
  }
  return false;
}
