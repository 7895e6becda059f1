import { chromium } from 'playwright-core';
import { chromiumFlags, findChromium } from './find-chromium.mjs';

/** Starts the machine's Chromium, headless, for journeys and pictures. */
export function launchChromium(extraFlags = []) {
  return chromium.launch({ executablePath: findChromium(), args: [...chromiumFlags, ...extraFlags] });
}
