import type { Plugin } from 'vite';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { aboutPage } from './about-page.ts';
import { contentSecurityPolicy, isSightWorker, securityHeaders, sightWorkerPolicy } from './content-policy.ts';
import { languageParts } from './language-parts.ts';
import { manifest } from './manifest.ts';
import { servedFiles } from './served-files.ts';
import { startParts } from './start-parts.ts';

/** The built page carries the policy itself, so that any static host serves it safely. */
const policyInPage: Plugin = {
  name: 'larkhold-policy',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: contentSecurityPolicy },
      injectTo: 'head-prepend',
    },
  ],
};

/** Serves the one worker that runs WebAssembly with its own policy. */
const sightWorkerHeaders: Plugin = {
  name: 'larkhold-sight-worker',
  configurePreviewServer(server) {
    server.middlewares.use((request, response, next) => {
      const isWorker = isSightWorker((request.url ?? '').split('?')[0] ?? '');
      if (isWorker) {
        const { setHeader } = response;
        response.setHeader = (name, value) =>
          setHeader.call(response, name, name.toLowerCase() === 'content-security-policy' ? sightWorkerPolicy : value);
      }
      next();
    });
  },
};

export default defineConfig({
  root: import.meta.dirname,
  base: './',
  resolve: { conditions: ['@larkhold/source', 'module', 'browser', 'development|production'] },
  build: {
    target: 'es2022',
    modulePreload: { polyfill: false },
    assetsInlineLimit: 0,
    rolldownOptions: {
      input: ['index.html', 'about.html'].map((page) => `${import.meta.dirname}/${page}`),
      output: { codeSplitting: startParts },
    },
  },
  preview: { headers: securityHeaders },
  worker: { format: 'es' },
  plugins: [
    policyInPage,
    sightWorkerHeaders,
    servedFiles,
    languageParts,
    aboutPage,
    VitePWA({
      registerType: 'prompt',
      injectRegister: false,
      workbox: {
        // In one file: Trusted Types let a service worker load no second script.
        inlineWorkboxRuntime: true,
        // The first page is served from the device at once, not from its second load on.
        clientsClaim: true,
        globPatterns: ['**/*.{js,css,html,svg,png,webm,mp3,json,webmanifest}'],
        maximumFileSizeToCacheInBytes: 4_000_000,
        // What sees is loaded, and kept for later without a network, only where the camera was turned on.
        globIgnores: ['**/sight-worker-*', '**/lark-sight*', '**/sight-camera-*', '**/movenet-lightning-*'],
        runtimeCaching: [
          {
            urlPattern:
              /\/assets\/(sight-worker|lark-sight|sight-camera|movenet-lightning|tfjs-backend-wasm)[\w-]*\.(js|json|bin|wasm)$/,
            handler: 'CacheFirst',
            options: { cacheName: 'larkhold-sight' },
          },
        ],
      },
      manifest,
    }),
  ],
});
