/** What `vite-plugin-pwa` puts into the bundle; written here so that no types of its own are needed. */
declare module 'virtual:pwa-register' {
  /** Registers the service worker. The function it gives takes a newer version into use. */
  export function registerSW(options: {
    onNeedRefresh?: () => void;
    onNeedReload?: () => void;
  }): (reloadPage?: boolean) => Promise<void>;
}
