/** Something that calls back again and again, also while the page is hidden. */
export interface Wake {
  /** @param everyMs milliseconds between calls; 0 stops them */
  every(everyMs: number): void;
  close(): void;
}

/**
 * Wake-ups from a Worker; from the page's own timer where a Worker cannot be had.
 *
 * @param onWake called at each wake-up
 * @returns the wake, stopped at first
 */
export function workerWake(onWake: () => void): Wake {
  let everyMs = 0;
  let timer: ReturnType<typeof setInterval> | undefined;
  let worker: Worker | undefined;
  const byTimer = (): void => {
    worker = undefined;
    clearInterval(timer);
    if (everyMs > 0) timer = setInterval(onWake, everyMs);
  };
  try {
    worker = new Worker(new URL('../worker/wake-worker.js', import.meta.url), { type: 'module' });
    worker.onmessage = onWake;
    worker.onerror = byTimer;
  } catch {
    worker = undefined;
  }
  return {
    every(ms) {
      everyMs = ms;
      if (worker) worker.postMessage(ms);
      else byTimer();
    },
    close() {
      worker?.terminate();
      worker = undefined;
      everyMs = 0;
      byTimer();
    },
  };
}
