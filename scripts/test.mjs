// Every check there is, from a bare clone: install, lint, types, directions, unit, browser, build, journeys.
import { readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { auditShipped } from './audit.mjs';
import {
  fail,
  requireChromium,
  requireNode,
  requirePackages,
  run,
  say,
  tryFirefox,
  tryNginx,
  tryWebkit,
} from './prepare.mjs';

requireNode();
requirePackages();
requireChromium();
tryFirefox();
tryWebkit();
tryNginx();

const counts = { passed: 0, failed: 0 };

function check(name, command, args) {
  say(`${name} …`);
  const good = run(command, args);
  counts[good ? 'passed' : 'failed'] += 1;
  if (!good) say(`${name}: failed`);
  return good;
}

function tests(project) {
  const report = join(tmpdir(), `larkhold-${project}-${process.pid}.json`);
  say(`${project} tests …`);
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  const good = run('npx', ['vitest', 'run', '--project', project, ...reporters]);
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

check('format and lint', 'npx', ['biome', 'ci', '--error-on-warnings', '.']);
const audit = auditShipped();
say(`audit: ${audit.words}.`);
if (audit.verdict !== 'unanswered') counts[audit.verdict === 'clean' ? 'passed' : 'failed'] += 1;
const typed = check('types of the packages', 'npx', ['tsc', '-b']);
check('types of the tests', 'npx', ['tsc', '-p', 'tsconfig.tests.json', '--noEmit']);
check('import directions', 'npm', ['run', '--silent', 'directions']);
tests('unit');
tests('browser');
const built =
  typed &&
  check('the runner for a page of one’s own', 'npm', ['run', '--silent', 'bundle', '-w', 'packages/runner']) &&
  check('build', 'npx', ['vite', 'build', 'apps/web', '--logLevel', 'warn']);
if (built) {
  check('sizes', 'npx', ['size-limit']);
  tests('journeys');
}

console.log(`${counts.passed} passed, ${counts.failed} failed`);
if (counts.failed > 0) fail('some checks failed; each is named above.');
