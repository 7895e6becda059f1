import { registerSW } from 'virtual:pwa-register';

/** Who hears of a newer version. */
export interface VersionListener {
  /** One waits. @param use begins it */
  onWaiting(use: () => void): void;
  /** It runs now, here or in another tab, and this page is of the old one. @param reload to be called when nothing is under way */
  onTaken(reload: () => void): void;
}

/**
 * Keeps the app on the device for use without a network. A newer version waits until the archer wants it, and then reaches every tab.
 * @param listener who hears of it
 */
export function keepVersion(listener: VersionListener): void {
  const workers = navigator.serviceWorker as ServiceWorkerContainer | undefined;
  const use = registerSW({
    onNeedRefresh: () => listener.onWaiting(() => void use(true)),
    // Heard below: the library leaves out a page that was open before the first version took hold.
    onNeedReload: () => undefined,
  });
  let isControlled = Boolean(workers?.controller);
  workers?.addEventListener('controllerchange', () => {
    if (isControlled) listener.onTaken(() => location.reload());
    isControlled = true;
  });
}
