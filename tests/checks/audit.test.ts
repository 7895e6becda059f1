import { expect, it } from 'vitest';
import { judgeAudit } from '../../scripts/audit.mjs';

/** As npm 10 prints it (`npm help audit`, and its own output); cut to what is read. */
const audit = (severity: string) =>
  JSON.stringify({
    auditReportVersion: 2,
    vulnerabilities: { lit: { name: 'lit', severity, isDirect: true } },
    metadata: { vulnerabilities: { info: 0, low: 0, moderate: 0, high: 0, critical: 0, total: 1 } },
  });

it.each(['high', 'critical'])('a %s weakness of something that ships fails, by name', (severity) => {
  expect(judgeAudit(audit(severity))).toEqual({
    verdict: 'weak',
    words: `known weaknesses in what ships: lit (${severity})`,
  });
});

it.each(['low', 'moderate'])('a %s one is counted', (severity) => {
  expect(judgeAudit(audit(severity))).toEqual({
    verdict: 'clean',
    words: 'no high or critical weakness known in what ships, 1 lesser',
  });
});

it.each([
  ['', 'no answer'],
  ['<html>', 'no answer'],
  ['{"error":{"summary":"audit endpoint returned an error"}}', 'audit endpoint returned an error'],
  ['{"message":"405 Method Not Allowed\\nmore"}', '405 Method Not Allowed'],
])('a registry that answers %j is reported in one line and held against nobody', (text, why) => {
  expect(judgeAudit(text)).toEqual({
    verdict: 'unanswered',
    words: `this registry does no audit (${why}): nothing was checked`,
  });
});
