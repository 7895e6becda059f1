/** One reading of both clocks at the same moment. */
export interface ClockReading {
  /** The page clock, milliseconds. */
  pageMs: number;
  /** What is heard at that moment, on the audio clock, seconds. */
  audioSeconds: number;
  /** Whether the browser took both itself; else the audio clock moves in steps and reads late by up to one. */
  isExact: boolean;
}

/**
 * So many exact readings count. A busy machine stamps one of them late now and then, and the sound loses a step of some ten milliseconds for good;
 * the middle of five sees past the first and follows the second after three wake-ups.
 */
const EXACT_COUNT = 5;
/** An exact reading older than this is forgotten, in milliseconds: after a block a step may have been lost meanwhile. */
const EXACT_WINDOW_MS = 1000;
/** How long another reading counts, in milliseconds: long enough to see past the steps, short enough to follow drift. */
const STEPPED_WINDOW_MS = 1500;
/** No stamp is late by so much: the audio clock stood still, in milliseconds. */
const JUMP_MS = 200;
/** A time stamp further than this from now is a leftover, in milliseconds. */
const LEFTOVER_MS = 250;

/** A map from the page clock to the audio clock. */
export interface ClockMap {
  add(reading: ClockReading): void;
  /** What must stand on the audio clock to be heard at a page time, seconds; undefined before the first reading. */
  toAudio(pageMs: number): number | undefined;
  clear(): void;
}

/**
 * A map without readings. Of exact readings the middle one counts; of stepped ones, which read late and never early, the one
 * furthest ahead.
 *
 * @returns the map
 * @source own, after measurements in Chromium: exact readings scatter by 0.2 ms, stepped ones by 12 ms
 */
export function createClockMap(): ClockMap {
  let readings: { pageMs: number; offsetMs: number; isExact: boolean }[] = [];
  const offsetMs = (): number | undefined => {
    const exact = readings.filter((reading) => reading.isExact).map((reading) => reading.offsetMs);
    if (exact.length > 0) return exact.sort((a, b) => a - b)[exact.length >> 1];
    return readings.length > 0 ? Math.max(...readings.map((reading) => reading.offsetMs)) : undefined;
  };
  return {
    add({ pageMs, audioSeconds, isExact }) {
      // After a block many wake-ups come at once, all with the same stamp.
      if (isExact && readings.at(-1)?.pageMs === pageMs) return;
      const offset = audioSeconds * 1000 - pageMs;
      const known = offsetMs();
      if (known !== undefined && Math.abs(known - offset) > JUMP_MS) readings = [];
      readings = readings.filter(
        (reading) => pageMs - reading.pageMs <= (reading.isExact ? EXACT_WINDOW_MS : STEPPED_WINDOW_MS),
      );
      readings.push({ pageMs, offsetMs: offset, isExact });
      if (isExact) readings = readings.slice(-EXACT_COUNT);
    },
    toAudio(pageMs) {
      const offset = offsetMs();
      return offset === undefined ? undefined : (pageMs + offset) / 1000;
    },
    clear() {
      readings = [];
    },
  };
}

/**
 * Reads both clocks: what is heard now.
 *
 * @param audio the running context
 * @param nowMs page clock now, milliseconds
 * @returns the reading; it counts the way from the audio clock to the loudspeaker as far as the browser knows it
 */
export function readClocks(
  audio: Pick<AudioContext, 'currentTime' | 'baseLatency' | 'outputLatency'> &
    Partial<Pick<AudioContext, 'getOutputTimestamp'>>,
  nowMs: number,
): ClockReading {
  const { contextTime = 0, performanceTime = 0 } = audio.getOutputTimestamp?.() ?? {};
  // Right after a start some browsers give zeros, after a pause the last stamp before it.
  if (contextTime > 0 && Math.abs(performanceTime - nowMs) < LEFTOVER_MS) {
    return { pageMs: performanceTime, audioSeconds: contextTime, isExact: true };
  }
  const latencySeconds = (audio.baseLatency || 0) + (audio.outputLatency || 0);
  return { pageMs: nowMs, audioSeconds: audio.currentTime - Math.min(1, latencySeconds), isExact: false };
}
