/** Nothing from elsewhere, nothing inline, no text turned into markup: what a file or a link brings can never run. */
export const contentSecurityPolicy = [
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
  // lit-html's is for templates written in this app; the default one lets own workers start, see src/safety/own-scripts.ts.
  "require-trusted-types-for 'script'",
  'trusted-types lit-html default',
].join('; ');

/** What a host should send with every file. The page carries the policy itself, so that a plain static host is safe too. */
export const securityHeaders = {
  'Content-Security-Policy': `${contentSecurityPolicy}; frame-ancestors 'none'`,
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy': 'camera=(self), geolocation=(), payment=(), usb=(), microphone=(self), screen-wake-lock=(self)',
  'Referrer-Policy': 'no-referrer',
  'X-Content-Type-Options': 'nosniff',
  'X-Frame-Options': 'DENY',
};

/**
 * The policy of the one worker that runs WebAssembly: a worker has its own file's policy, not the page's. A static host that sends no headers
 * needs nothing of this.
 */
export const sightWorkerPolicy = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; connect-src 'self'";

/** Whether a file is that worker's. */
export function isSightWorker(path: string): boolean {
  return /\/sight-worker-[\w-]+\.js$/.test(path);
}
