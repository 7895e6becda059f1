/** The part of the Trusted Types API that is used here; the browsers' own types do not know it yet. */
interface PolicyFactory {
  createPolicy(name: string, rules: { createScriptURL(address: string): string }): unknown;
}

declare global {
  interface Window {
    trustedTypes?: PolicyFactory;
  }
}

/**
 * Lets workers and the service worker be started from this app's own files, and from nowhere else. It has no rule for markup or script text, so a
 * text that would be turned into either throws. Call it once, before anything starts a worker.
 * @source W3C, Trusted Types, "default policy"
 */
export function allowOwnScripts(): void {
  window.trustedTypes?.createPolicy('default', {
    createScriptURL(address) {
      const { origin } = new URL(address, document.baseURI);
      if (origin !== location.origin) throw new TypeError(`script address: expected this origin, got ${origin}`);
      return address;
    },
  });
}
