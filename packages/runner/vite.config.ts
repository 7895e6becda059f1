import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

/** One file for pages without a bundler: the elements with all they need. */
export default defineConfig({
  root: fileURLToPath(new URL('.', import.meta.url)),
  // Workers and the spoken words are found beside the file, wherever it is served from.
  base: './',
  resolve: { conditions: ['@larkhold/source', 'module', 'browser', 'production', 'import', 'default'] },
  build: {
    outDir: 'dist/bundle',
    emptyOutDir: true,
    assetsInlineLimit: 0,
    // One file is what it is for; .size-limit.js holds its size.
    chunkSizeWarningLimit: 1000,
    rollupOptions: {
      input: fileURLToPath(new URL('src/bundle.ts', import.meta.url)),
      preserveEntrySignatures: 'exports-only',
      output: { entryFileNames: 'larkhold-runner.js', assetFileNames: '[name]-[hash][extname]' },
    },
  },
});
