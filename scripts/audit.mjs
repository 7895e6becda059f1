import { execFile } from 'node:child_process';
import { root } from './prepare.mjs';

/** A registry that does not answer is not waited for longer, milliseconds. */
const WAIT_MS = 60_000;

/**
 * Reads what `npm audit --json` said.
 * @param {string} text its output
 * @returns {{ verdict: 'clean' | 'weak' | 'unanswered', words: string }} high and critical advisories are weak; what was not answered is neither
 */
export function judgeAudit(text) {
  let told;
  try {
    told = JSON.parse(text);
  } catch {
    told = {};
  }
  const counts = told.metadata?.vulnerabilities;
  if (!counts) {
    const why = told.message ?? told.error?.summary ?? 'no answer';
    return {
      verdict: 'unanswered',
      words: `this registry does no audit (${String(why).split('\n')[0]}): nothing was checked`,
    };
  }
  const names = Object.values(told.vulnerabilities ?? {})
    .filter(({ severity }) => severity === 'high' || severity === 'critical')
    .map(({ name, severity }) => `${name} (${severity})`);
  if (names.length > 0) return { verdict: 'weak', words: `known weaknesses in what ships: ${names.join(', ')}` };
  return { verdict: 'clean', words: `no high or critical weakness known in what ships, ${counts.total} lesser` };
}

/** Asks the registry about the dependencies that ship. @returns a promise of what `judgeAudit` makes of the answer */
export function auditShipped() {
  const asked = ['audit', '--omit=dev', '--json'];
  return new Promise((resolve) => {
    execFile('npm', asked, { cwd: root, timeout: WAIT_MS }, (_, said) => resolve(judgeAudit(said)));
  });
}
