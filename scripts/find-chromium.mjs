import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

/** Flags every automated Chromium here starts with: no sandbox (root), no background traffic, sound without a press. */
export const chromiumFlags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-default-apps',
  '--no-default-browser-check',
  '--autoplay-policy=no-user-gesture-required',
];

/** Chromium without windows, which does the same for a page at a third of the work. */
const shells = ['chromium-headless-shell', 'chrome-headless-shell'];
const names = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'chrome'];

function isExecutable(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/**
 * The path of an installed program.
 * @param {string | undefined} given a path that comes first, where it is one
 * @param {readonly string[]} programs names to look for in PATH, in order
 * @returns {string | undefined} its path, or undefined where there is none
 */
export function findProgram(given, programs, env = process.env) {
  if (given && isExecutable(given)) return given;
  const folders = (env.PATH ?? '').split(delimiter).filter(Boolean);
  for (const name of programs) {
    const found = folders.map((folder) => join(folder, name)).find(isExecutable);
    if (found) return found;
  }
  return undefined;
}

/** The path of an installed Chromium or Chrome: `CHROMIUM_PATH` first, then PATH; undefined where there is none. */
export function findChromium(env = process.env) {
  return findProgram(env.CHROMIUM_PATH, names, env);
}

/** The path of an installed Chromium without windows; of a whole one where there is none, or where `CHROMIUM_PATH` names one. */
export function findShell(env = process.env) {
  return findProgram(env.CHROMIUM_PATH, [...shells, ...names], env);
}
