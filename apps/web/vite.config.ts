import type { Plugin } from 'vite';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { manifest } from './manifest.ts';

/** Nothing from elsewhere, nothing inline: what a file or a link brings can never run. */
const contentSecurityPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "media-src 'self' blob:",
  "font-src 'self'",
  "worker-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

const securityHeaders = {
  'Content-Security-Policy': `${contentSecurityPolicy}; frame-ancestors 'none'`,
  'Referrer-Policy': 'no-referrer',
  'X-Content-Type-Options': 'nosniff',
};

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

export default defineConfig({
  root: import.meta.dirname,
  base: './',
  resolve: { conditions: ['@larkhold/source', 'module', 'browser', 'development|production'] },
  build: { target: 'es2022', modulePreload: { polyfill: false }, assetsInlineLimit: 0 },
  preview: { headers: securityHeaders },
  worker: { format: 'es' },
  plugins: [
    policyInPage,
    VitePWA({
      registerType: 'prompt',
      injectRegister: false,
      workbox: {
        globPatterns: ['**/*.{js,css,html,svg,png,webm,mp3,json,webmanifest}'],
        maximumFileSizeToCacheInBytes: 4_000_000,
      },
      manifest,
    }),
  ],
});
