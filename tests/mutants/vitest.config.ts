import { defineConfig } from 'vitest/config';

const conditions = ['@larkhold/source', 'module', 'node', 'development|production', 'import', 'default'];

/** The engine's own tests, as `npm run mutants` runs them for each mutant. */
export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: {
    environment: 'node',
    testTimeout: 60_000,
    include: ['packages/engine/src/**/*.test.ts', 'tests/reference/**/*.test.ts'],
    server: { deps: { inline: [/@larkhold/] } },
  },
});
