/** One reading of both clocks at the same moment. */
export interface ClockReading {
  /** The page clock, milliseconds. */
  pageMs: number;
  /** The audio clock, seconds. */
  audioSeconds: number;
}

/** How long a reading counts, in milliseconds: long enough to see past the audio clock's steps, short enough to follow drift. */
const WINDOW_MS = 4000;
/** The two clocks cannot part by more than this without the audio clock having stood still, in milliseconds. */
const JUMP_MS = 60;

/**
 * A map from the page clock to the audio clock. The audio clock moves in steps and so reads late, never early: the reading that
 * is furthest ahead within the last seconds is the truest.
 *
 * @returns `add` takes a reading, `toAudio` gives the audio time of a page time, or undefined before the first reading
 * @source own, after measurements in Chromium
 */
export function createClockMap(): {
  add(reading: ClockReading): void;
  toAudio(pageMs: number): number | undefined;
  clear(): void;
} {
  let readings: { pageMs: number; offsetMs: number }[] = [];
  const furthest = (): number => Math.max(...readings.map((reading) => reading.offsetMs));
  return {
    add({ pageMs, audioSeconds }) {
      const offsetMs = audioSeconds * 1000 - pageMs;
      readings = readings.filter((reading) => pageMs - reading.pageMs <= WINDOW_MS);
      if (readings.length > 0 && Math.abs(furthest() - offsetMs) > JUMP_MS) readings = [];
      readings.push({ pageMs, offsetMs });
    },
    toAudio: (pageMs) => (readings.length === 0 ? undefined : (pageMs + furthest()) / 1000),
    clear() {
      readings = [];
    },
  };
}
