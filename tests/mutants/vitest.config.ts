import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin } from 'vitest/config';

const conditions = ['@larkhold/source', 'module', 'node', 'development|production', 'import', 'default'];
const { MUTANTS_ROOM: room } = process.env;
const fewRunsFile = fileURLToPath(new URL('few-runs.ts', import.meta.url));

const fewRuns: Plugin = {
  name: 'few-runs',
  enforce: 'pre',
  resolveId: (source, importer) => (source === 'fast-check' && importer !== fewRunsFile ? fewRunsFile : undefined),
};

/**
 * The engine's own tests, as `npm run mutants` runs them for each mutant: properties with fewer cases, and the code read once for all files of tests, for most of a mutant's time went there.
 * With MUTANTS_ROOM only the tests of that room, which is much quicker and the harder question.
 */
export default defineConfig({
  plugins: [fewRuns],
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: {
    environment: 'node',
    isolate: false,
    testTimeout: 60_000,
    include: room
      ? [`packages/engine/src/${room}/**/*.test.ts`]
      : ['packages/engine/src/**/*.test.ts', 'tests/reference/**/*.test.ts'],
    // These two count what they met in thousands of cases, and ask nothing of the rooms that get faults.
    exclude: ['packages/engine/src/program/hostile-text.test.ts', 'tests/reference/json-schema-agreement.test.ts'],
    server: { deps: { inline: [/@larkhold/] } },
  },
});
