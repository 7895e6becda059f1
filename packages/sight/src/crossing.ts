/** A value at an instant, milliseconds. */
export interface Reading {
  atMs: number;
  value: number;
}

/**
 * When a series first rises over a threshold, between two readings as on a straight line. Readings that run back in time find where a
 * movement came to rest.
 * @param readings in the order in which to look
 * @param threshold same unit as the values
 * @returns the instant, milliseconds; undefined where nothing rises over it after a reading that lies under it
 */
export function crossingAtMs(readings: readonly Reading[], threshold: number): number | undefined {
  let under: Reading | undefined;
  for (const reading of readings) {
    if (reading.value <= threshold) {
      under = reading;
    } else if (under !== undefined) {
      const part = (threshold - under.value) / (reading.value - under.value);
      return under.atMs + (reading.atMs - under.atMs) * part;
    }
  }
  return undefined;
}
