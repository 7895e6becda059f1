import type { BrowserContext, Locator } from 'playwright-core';

/** How far one look at the clock may jump: less than what a session takes for lost time. */
const stepMs = 3000;

/**
 * Makes the clock of all pages of a context stand still, so that only `pass` and `passUntil` move it.
 * @param at milliseconds since 1970; now unless a test says otherwise
 */
export async function standStill(context: BrowserContext, at = Date.now()): Promise<void> {
  await context.clock.install({ time: at });
  await context.clock.pauseAt(at + 1000);
}

/** Moves the clock as a living page would see it, in steps. */
export async function pass(context: BrowserContext, ms: number): Promise<void> {
  for (let left = ms; left > 0; left -= stepMs) await context.clock.fastForward(Math.min(left, stepMs));
}

/**
 * Moves the clock until something stands on the screen.
 * @param limitMs milliseconds of fast time after which it gives up
 */
export async function passUntil(context: BrowserContext, shown: Locator, limitMs = 600_000): Promise<void> {
  for (let passed = 0; passed < limitMs && !(await shown.isVisible()); passed += stepMs) {
    await context.clock.fastForward(stepMs);
  }
  await shown.waitFor();
}
