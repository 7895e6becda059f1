/**
 * Mutants: small faults put into the engine's rooms one at a time, to see whether a test notices. `npm run mutants`, or a part of it:
 * `npm run mutants -- --mutate 'packages/engine/src/session/**'`. It takes hours for all three rooms, so it is not in `npm test`.
 */
export default {
  mutate: [
    'packages/engine/src/{prescription,journal,session}/**/*.ts',
    '!packages/engine/src/**/*.test.ts',
    '!packages/engine/src/**/{trial,arbitrary}*.ts',
    '!packages/engine/src/**/index.ts',
  ],
  testRunner: 'vitest',
  vitest: { configFile: 'tests/mutants/vitest.config.ts', related: true },
  plugins: ['@stryker-mutator/vitest-runner'],
  ignorePatterns: ['apps/*/dist', 'docs', 'shots', 'packages/*/dist', 'tests/journeys', 'tests/bench'],
  coverageAnalysis: 'perTest',
  concurrency: 1,
  timeoutMS: 20_000,
  dryRunTimeoutMinutes: 30,
  incremental: true,
  incrementalFile: '.stryker/incremental.json',
  tempDirName: '.stryker/tmp',
  reporters: ['clear-text', 'progress-append-only', 'json'],
  jsonReporter: { fileName: '.stryker/mutants.json' },
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
};
