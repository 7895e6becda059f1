import { availableParallelism } from 'node:os';
import { playwright } from '@vitest/browser-playwright';
import { defineConfig } from 'vitest/config';
import { chromiumFlags, findChromium } from './scripts/find-chromium.mjs';
import { LongFirst } from './tests/long-first.ts';

const resolve = {
  conditions: ['@larkhold/source', 'module', 'browser', 'development|production', 'import', 'default'],
};
const ssr = {
  resolve: { conditions: ['@larkhold/source', 'module', 'node', 'development|production', 'import', 'default'] },
};

export default defineConfig({
  test: {
    sequence: { sequencer: LongFirst },
    projects: [
      {
        resolve,
        ssr,
        test: {
          name: 'unit',
          environment: 'node',
          isolate: false, // 230 files, most of which load the whole engine: loaded once for each worker, they take half the time
          maxWorkers: Math.max(2, availableParallelism() - 1), // left alone it is one of two processors
          setupFiles: ['tests/first-words.ts', 'tests/kept-seed.ts'],
          testTimeout: 60_000, // properties do much work, on machines that may have other work too
          include: [
            'packages/*/src/**/*.test.ts',
            'apps/*/src/**/*.test.ts',
            'tests/reference/**/*.test.ts',
            'tests/checks/**/*.test.ts',
            'tests/fuzz/**/*.test.ts',
          ],
          server: { deps: { inline: [/@larkhold/] } },
        },
      },
      {
        resolve,
        optimizeDeps: {
          include: [
            'lit',
            'lit/decorators.js',
            'zod',
            'xstate',
            'howler',
            'axe-core',
            'idb',
            'fast-check',
            'culori',
            'uplot',
            '@lit/context',
            'intl-messageformat',
            'lit/directives/guard.js',
            'lit/directives/keyed.js',
            'lit/directives/repeat.js',
            'lit/directives/until.js',
            'regexparam',
            'sortablejs',
            'uqr',
            'fflate',
            'perfect-freehand',
            'age-encryption',
            '@scure/base',
          ],
        },
        test: {
          name: 'browser',
          include: ['packages/*/src/**/*.browser.ts', 'apps/web/src/**/*.browser.ts'],
          setupFiles: ['tests/fresh-page.ts', 'tests/first-words.ts'],
          testTimeout: 60_000, // a machine may have other work too
          browser: {
            enabled: true,
            isolate: false,
            headless: true,
            screenshotFailures: false,
            provider: playwright({ launchOptions: { executablePath: findChromium(), args: chromiumFlags } }),
            instances: [{ browser: 'chromium' }],
          },
        },
      },
      {
        // On the packages as they are built, as a user's own program loads them: the sources would be transformed anew for each file.
        test: {
          name: 'journeys',
          environment: 'node',
          isolate: false,
          server: { deps: { external: [/\/packages\/[^/]+\/dist\//] } },
          include: ['tests/journeys/**/*.test.ts'],
          globalSetup: ['tests/journeys/serve.ts'],
          // Nothing here measures how fast it is: a wait ends in vain after PATIENCE_MS, a test only where it is lost.
          testTimeout: 400_000,
          hookTimeout: 120_000,
          expect: { poll: { timeout: 90_000 } },
          // Journeys mostly wait: two at a time on two cores leave the processors half idle, and no journey minds a busy machine.
          maxWorkers: 3,
        },
      },
    ],
  },
});
