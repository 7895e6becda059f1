/**
 * Starts the worker in which the model runs.
 * @returns the worker; nothing of the model is loaded before it is told to start
 */
export function startSightWorker(): Worker {
  return new Worker(new URL('../worker/sight-worker.js', import.meta.url), { type: 'module' });
}
