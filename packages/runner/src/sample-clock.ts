/** Pieces of sound that the clock goes by: some five seconds of twenty milliseconds each. */
const PIECES = 256;

/**
 * Tells when on the page's clock a sample was taken. Pieces of sound come late when the page is busy but never early, so those that came
 * soonest show where the sound's clock is.
 * @param sampleRate samples a second
 * @returns `heard` takes each piece's length and when it came in, milliseconds; `atMs` gives the moment of a time since the first sample, seconds
 */
export function createSampleClock(sampleRate: number): {
  heard(count: number, nowMs: number): void;
  atMs(seconds: number): number;
} {
  const beganAtMs: number[] = [];
  let samples = 0;
  return {
    heard(count, nowMs) {
      samples += count;
      beganAtMs.push(nowMs - (samples / sampleRate) * 1000);
      if (beganAtMs.length > PIECES) beganAtMs.shift();
    },
    atMs: (seconds) => Math.min(...beganAtMs) + seconds * 1000,
  };
}
