/** For how long a picture that does not change may be a calm archer's, milliseconds. A real camera's noise is never still. */
const FROZEN_MS = 2_000;

/** Tells a frozen picture from a calm archer. */
export interface FrozenWatch {
  /**
   * @param sum any number that changes with the picture
   * @param atMs when it was taken, milliseconds
   * @returns whether not one pixel has changed for two seconds
   */
  push(sum: number, atMs: number): boolean;
}

/**
 * Watches for a camera that gives the same picture again and again.
 * @returns the watch, having seen nothing
 */
export function createFrozenWatch(): FrozenWatch {
  let still = { sum: Number.NaN, sinceMs: 0 };
  return {
    push(sum, atMs) {
      if (sum !== still.sum) still = { sum, sinceMs: atMs };
      return atMs - still.sinceMs > FROZEN_MS;
    },
  };
}
