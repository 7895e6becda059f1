import { spawn, spawnSync } from 'node:child_process';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { findChromium, findShell } from './find-chromium.mjs';
import { findFirefox } from './find-firefox.mjs';
import { findWebkit } from './find-webkit.mjs';

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

/** The same, while others run. @returns a promise of whether it went well */
export function runShown(command, args) {
  return new Promise((resolve) => {
    spawn(command, args, { cwd: root, stdio: 'inherit' })
      .on('error', () => resolve(false))
      .on('close', (code) => resolve(code === 0));
  });
}

/** Runs a command in the root while others run. @returns a promise of whether it went well, and all that it said */
export function runBeside(command, args) {
  return new Promise((resolve) => {
    let said = '';
    const child = spawn(command, args, { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] });
    for (const stream of [child.stdout, child.stderr]) stream.setEncoding('utf8').on('data', (text) => (said += text));
    child
      .on('error', (error) => resolve({ good: false, said: error.message }))
      .on('close', (code) => resolve({ good: code === 0, said }));
  });
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

/** Whether Debian's packages can be installed here. */
function canInstall() {
  const isDebian =
    existsSync('/etc/os-release') && /^ID(_LIKE)?=.*debian/m.test(readFileSync('/etc/os-release', 'utf8'));
  return isDebian && process.getuid?.() === 0;
}

let areListsFresh = false;

/** Installs by apt-get; the package lists are fetched once. @returns whether both went well */
function install(args, options) {
  const aptGet = (...words) =>
    spawnSync('apt-get', words, { ...options, env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } }).status ===
    0;
  areListsFresh ||= aptGet('update', '-qq');
  return aptGet('install', '-y', '-qq', ...args) && areListsFresh;
}

/** Finds Chromium, or installs Debian's where that can be done; ends with one line where it cannot. */
export function requireChromium() {
  const found = findChromium();
  if (found) return found;
  if (!canInstall()) {
    fail('no Chromium found: install Chromium or Chrome, or set CHROMIUM_PATH to its program.');
  }
  say("installing Debian's chromium …");
  const done = install(['chromium'], { stdio: 'inherit' });
  const path = findChromium();
  if (!done || !path) fail('apt-get could not install chromium: its own words are above.');
  return path;
}

/** What a small package mirror needs for a browser, at most; a slower one leaves its journey out, milliseconds. */
const BROWSER_WAIT_MS = 120_000;

/** Installs Debian's Chromium without windows, where that is quickly done: with it the journeys cost half as much. */
export function tryShell() {
  if (findShell() !== findChromium() || !canInstall()) return;
  say("installing Debian's chromium-headless-shell …");
  install(['--no-install-recommends', 'chromium-headless-shell'], { stdio: 'ignore', timeout: BROWSER_WAIT_MS });
}

/** Installs Debian's Firefox for the second browser's journey, where that is quickly done. Without it that journey says so and passes. */
export function tryFirefox() {
  if (findFirefox() || !canInstall()) return;
  say("installing Debian's firefox-esr, for the journey in a second browser …");
  install(['--no-install-recommends', 'firefox-esr'], { stdio: 'ignore', timeout: BROWSER_WAIT_MS });
  if (!findFirefox()) say('Firefox could not be installed here; the journey in a second browser will be left out.');
}

/** Installs Debian's WebKitGTK with its driver, for the third engine's journey, where that is quickly done. Without it that journey says so and passes. */
export function tryWebkit() {
  if (findWebkit() || !canInstall()) return;
  say("installing Debian's webkit2gtk-driver, for the journey in a third engine …");
  install(['--no-install-recommends', 'webkit2gtk-driver', 'xvfb', 'xauth'], {
    ...{ stdio: 'ignore', timeout: BROWSER_WAIT_MS },
  });
  if (!findWebkit()) say('WebKitGTK could not be installed here; the journey in a third engine will be left out.');
}

/** Installs Debian's nginx, for the box on a host, where that can be done. Without it those tests say so and pass. */
export function tryNginx() {
  const isThere = () => ['nginx', '/usr/sbin/nginx'].some((one) => spawnSync(one, ['-v']).status === 0);
  if (isThere() || !canInstall()) return;
  say("installing Debian's nginx-light, for the box on a host …");
  install(['--no-install-recommends', 'nginx-light'], { stdio: 'ignore' });
  if (!isThere())
    say('nginx could not be installed here: the box on a host will not be tried. Install nginx with its dav module.');
}
