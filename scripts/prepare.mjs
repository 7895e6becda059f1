import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { findChromium } from './find-chromium.mjs';
import { findFirefox } from './find-firefox.mjs';

/** The project's root folder. */
export const root = fileURLToPath(new URL('..', import.meta.url));

/** Says what is being done. */
export function say(sentence) {
  console.log(`larkhold: ${sentence}`);
}

/** Ends with one clear line. */
export function fail(sentence) {
  console.error(`larkhold: ${sentence}`);
  process.exit(1);
}

/** Runs a command in the root with its output shown; returns whether it went well. */
export function run(command, args, env = {}) {
  const done = spawnSync(command, args, { cwd: root, stdio: 'inherit', env: { ...process.env, ...env } });
  return done.status === 0;
}

/** Ends with one line where Node is too old for the tools. */
export function requireNode() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    fail(`Node 20.19 or newer is needed, this is ${process.versions.node}.`);
  }
}

/** Installs the packages of the lock file, unless that very lock file is installed already. */
export function requirePackages() {
  const installed = `${root}node_modules/.package-lock.json`;
  if (existsSync(installed) && statSync(installed).mtimeMs >= statSync(`${root}package-lock.json`).mtimeMs) return;
  say('installing packages (npm ci) …');
  if (!run('npm', ['ci', '--no-audit', '--no-fund'])) {
    fail('npm ci failed: is the npm registry reachable? Its own words are above.');
  }
}

function isDebian() {
  return existsSync('/etc/os-release') && /^ID(_LIKE)?=.*debian/m.test(readFileSync('/etc/os-release', 'utf8'));
}

/** Finds Chromium, or installs Debian's where that can be done; ends with one line where it cannot. */
export function requireChromium() {
  const found = findChromium();
  if (found) return found;
  if (!isDebian() || process.getuid?.() !== 0) {
    fail('no Chromium found: install Chromium or Chrome, or set CHROMIUM_PATH to its program.');
  }
  say("installing Debian's chromium …");
  const quiet = { DEBIAN_FRONTEND: 'noninteractive' };
  const done = run('apt-get', ['update', '-qq'], quiet) && run('apt-get', ['install', '-y', '-qq', 'chromium'], quiet);
  const path = findChromium();
  if (!done || !path) fail('apt-get could not install chromium: its own words are above.');
  return path;
}

/** What a small package mirror needs for Firefox, at most; a slower one leaves the second browser out, milliseconds. */
const FIREFOX_WAIT_MS = 120_000;

/** Installs Debian's Firefox for the second browser's journey, where that is quickly done. Without it that journey says so and passes. */
export function tryFirefox() {
  if (findFirefox() || !isDebian() || process.getuid?.() !== 0) return;
  say("installing Debian's firefox-esr, for the journey in a second browser …");
  const options = {
    stdio: 'ignore',
    timeout: FIREFOX_WAIT_MS,
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  };
  spawnSync('apt-get', ['update', '-qq'], options);
  spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'firefox-esr'], options);
  if (!findFirefox()) say('Firefox could not be installed here; the journey in a second browser will be left out.');
}
