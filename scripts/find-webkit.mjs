import { existsSync } from 'node:fs';
import { findProgram } from './find-chromium.mjs';

/** Where Debian puts WebKitGTK's small browser: in no folder of PATH. */
const browsers = ['x86_64-linux-gnu', 'aarch64-linux-gnu'].flatMap((machine) =>
  ['webkitgtk-6.0', 'webkit2gtk-4.1', 'webkit2gtk-4.0'].map((version) => `/usr/lib/${machine}/${version}/MiniBrowser`),
);

/**
 * What drives a WebKit: its driver (`WEBKIT_DRIVER_PATH` first, then PATH), its small browser (`WEBKIT_PATH` first, then where Debian puts it), and a
 * screen for it; undefined where any of them is missing.
 */
export function findWebkit(env = process.env) {
  const driver = findProgram(env.WEBKIT_DRIVER_PATH, ['WebKitWebDriver'], env);
  const browser = [env.WEBKIT_PATH, ...browsers].find((path) => path !== undefined && existsSync(path));
  const screen = findProgram(undefined, ['xvfb-run'], env);
  return driver && browser && screen ? { driver, browser, screen } : undefined;
}
