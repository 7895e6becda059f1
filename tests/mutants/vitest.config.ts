import { defineConfig } from 'vitest/config';

const conditions = ['@larkhold/source', 'module', 'node', 'development|production', 'import', 'default'];
const { MUTANTS_ROOM: room } = process.env;

/** The engine's own tests, as `npm run mutants` runs them for each mutant; with MUTANTS_ROOM only those beside that room's code, which is much quicker and the harder question. */
export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: {
    environment: 'node',
    testTimeout: 60_000,
    include: room
      ? [`packages/engine/src/${room}/*.test.ts`]
      : ['packages/engine/src/**/*.test.ts', 'tests/reference/**/*.test.ts'],
    server: { deps: { inline: [/@larkhold/] } },
  },
});
