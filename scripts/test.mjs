// Every check there is, from a bare clone: install, lint, types, directions, unit, browser, build, journeys.
import { readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { auditShipped } from './audit.mjs';
import { fail, requireChromium, requireNode, requirePackages, runBeside, runShown, say } from './prepare.mjs';

requireNode();
requirePackages();
requireChromium();

const counts = { passed: 0, failed: 0 };

/** Runs a check beside others; what it says comes in one piece when it ends. */
async function check(name, command, args) {
  const { good, said } = await runBeside(command, args);
  counts[good ? 'passed' : 'failed'] += 1;
  say(`${name}: ${good ? 'passed' : 'failed'}`);
  if (said.trim()) console.log(said.trimEnd());
  return good;
}

async function tests(project) {
  const report = join(tmpdir(), `larkhold-${project}-${process.pid}.json`);
  say(`${project} tests …`);
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  const good = await runShown('npx', ['vitest', 'run', '--project', project, ...reporters]);
  try {
    const told = JSON.parse(readFileSync(report, 'utf8'));
    counts.passed += told.numPassedTests;
    counts.failed += told.numFailedTests;
    if (!good && told.numFailedTests === 0) counts.failed += 1;
  } catch {
    counts.failed += 1; // a run that leaves no report did not run
  }
  rmSync(report, { force: true });
}

/** What journeys need: the packages, the runner for a page of one’s own, and the app. */
async function build() {
  const isBuilt =
    (await check('the runner for a page of one’s own', 'npm', [
      'run',
      '--silent',
      'bundle',
      '-w',
      'packages/runner',
    ])) && (await check('build', 'npx', ['vite', 'build', 'apps/web', '--logLevel', 'warn']));
  if (isBuilt) await check('sizes', 'npx', ['size-limit']);
  return isBuilt;
}

// Most of these keep one processor busy, so they run side by side.
say('format, lint, types, import directions …');
const [isTyped, browsers, audit] = await Promise.all([
  check('types of the packages', 'npx', ['tsc', '-b']),
  runBeside('node', ['scripts/try-browsers.mjs']),
  auditShipped(),
  check('format and lint', 'npx', ['biome', 'ci', '--error-on-warnings', '.']),
]);
if (browsers.said) console.log(browsers.said.trimEnd());
say(`audit: ${audit.words}.`);
if (audit.verdict !== 'unanswered') counts[audit.verdict === 'clean' ? 'passed' : 'failed'] += 1;
const [isBuilt] = await Promise.all([
  (async () => {
    const isBuilt = isTyped && (await build());
    await check('types of the tests', 'npx', ['tsc', '-p', 'tsconfig.tests.json', '--noEmit']);
    await check('import directions', 'npm', ['run', '--silent', 'directions']);
    return isBuilt;
  })(),
  (async () => {
    await tests('unit');
    await tests('browser');
  })(),
]);
if (isBuilt) await tests('journeys');

console.log(`${counts.passed} passed, ${counts.failed} failed`);
if (counts.failed > 0) fail('some checks failed; each is named above.');
