import { chromium } from 'playwright-core';
import { chromiumFlags, findChromium, findShell } from './find-chromium.mjs';

/** Starts the machine's Chromium, headless, for pictures and benches. */
export function launchChromium(extraFlags = []) {
  return chromium.launch({ executablePath: findChromium(), args: [...chromiumFlags, ...extraFlags] });
}

/** Starts the cheapest Chromium of the machine, for journeys. */
export function launchShell(extraFlags = []) {
  return chromium.launch({ executablePath: findShell(), args: [...chromiumFlags, ...extraFlags] });
}
