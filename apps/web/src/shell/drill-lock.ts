/** One drill at a time over all tabs of a browser. */
export interface DrillLock {
  /** Whether a drill runs in another tab. */
  readonly isElsewhere: boolean;
  /** Takes the drill for this tab. @returns false while another tab has it */
  take(): Promise<boolean>;
  /** Gives it back; also happens by itself when the tab closes or dies. */
  free(): void;
  /** Hears when another tab begins or ends. @returns stops it. */
  subscribe(fn: () => void): () => void;
}

/** Another tab that only looks holds the lock for a moment; this is longer. */
const PATIENCE_MS = 400;

/**
 * A lock that the browser itself frees when a tab dies. Without Web Locks (an address without https that is not this machine) every tab may begin.
 * @param name the same in all tabs
 * @param locks the browser's own unless a test says otherwise
 * @returns the lock, free
 */
export function createDrillLock(
  name = 'larkhold-drill',
  locks: LockManager | undefined = globalThis.navigator?.locks,
): DrillLock {
  const listeners = new Set<() => void>();
  const channel = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(name);
  let isElsewhere = false;
  let giveBack: (() => void) | undefined;

  function say(next: boolean): void {
    if (isElsewhere === next) return;
    isElsewhere = next;
    for (const fn of [...listeners]) fn();
  }

  /** Waits until no tab has it. A shared lock is let in only then, and is given back at once. */
  async function watch(): Promise<void> {
    if (!locks || giveBack || isElsewhere) return;
    const { held = [] } = await locks.query();
    if (giveBack || isElsewhere || !held.some((lock) => lock.name === name && lock.mode === 'exclusive')) return;
    say(true);
    await locks.request(name, { mode: 'shared' }, () => undefined);
    say(false);
  }

  // A browser that refuses locks must not stop the app; then every tab may begin.
  const look = (): void => void watch().catch(() => say(false));
  channel?.addEventListener('message', look);
  look();

  return {
    get isElsewhere() {
      return isElsewhere;
    },
    take() {
      if (!locks || giveBack) return Promise.resolve(true);
      return new Promise((resolve) => {
        locks
          .request(name, { signal: AbortSignal.timeout(PATIENCE_MS) }, () => {
            resolve(true);
            channel?.postMessage('begun');
            return new Promise<void>((free) => {
              giveBack = free;
            });
          })
          .catch((error: unknown) => {
            const isHeld = error instanceof DOMException && ['TimeoutError', 'AbortError'].includes(error.name);
            if (isHeld) look();
            resolve(!isHeld);
          });
      });
    },
    free() {
      giveBack?.();
      giveBack = undefined;
    },
    subscribe(fn) {
      listeners.add(fn);
      return () => listeners.delete(fn);
    },
  };
}

/** Where there is only one tab: tests, and elements shown alone. */
export const onlyTab: DrillLock = {
  isElsewhere: false,
  take: () => Promise.resolve(true),
  free: () => undefined,
  subscribe: () => () => undefined,
};
