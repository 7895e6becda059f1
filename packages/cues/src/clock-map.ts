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
 * How many exact readings say where the clock is now. A busy machine stamps one of them late now and then, and the sound loses a step of some ten
 * milliseconds for good; the middle of five sees past the first and follows the second after three wake-ups.
 */
const QUICK_COUNT = 5;
/** How many together say it more closely: single ones scatter. */
const STEADY_COUNT = 40;
/** Fewer than this are no closer than the last five. */
const STEADY_FROM = 20;
/** The last five differ from all by this much, in milliseconds: the sound has lost a step, and all before it are of no use. */
const STEP_MS = 1;
/** After how long without a reading those before are forgotten, in milliseconds: a step may have been lost meanwhile. */
const EXACT_GAP_MS = 1000;
/** How long another reading counts, in milliseconds: long enough to see past the steps, short enough to follow drift. */
const STEPPED_WINDOW_MS = 1500;
/** How late no stamp is, ms: beyond it the audio clock stood still. */
const JUMP_MS = 200;
/** A time stamp further than this from now is a leftover, in milliseconds. */
const LEFTOVER_MS = 250;

/** A map from the page clock to the audio clock. */
export interface ClockMap {
  add(reading: ClockReading): void;
  /** What must be put on the audio clock to be heard at a page time, seconds; undefined before the first reading. */
  toAudio(pageMs: number): number | undefined;
  /** The last exact reading differs from the rest: it was stamped late, or the sound has lost a step; the next ones say which. */
  readonly isInDoubt: boolean;
  clear(): void;
}

interface Offset {
  pageMs: number;
  offsetMs: number;
}

/**
 * A map without readings. Of exact readings the middle one counts: of the last five while a step may have been lost, of the last two seconds
 * otherwise. Of stepped ones, which read late and never early, the one furthest ahead counts.
 *
 * @returns the map
 * @source own, after measurements in Chromium: exact readings scatter by 0.2 ms, stepped ones by 12 ms
 */
export function createClockMap(): ClockMap {
  let exact: Offset[] = [];
  let stepped: Offset[] = [];
  let offsetMs: number | undefined;
  let isInDoubt = false;

  function addExact(reading: Offset): void {
    const last = exact.at(-1);
    if (last && reading.pageMs - last.pageMs > EXACT_GAP_MS) exact = [];
    stepped = [];
    exact = [...exact.slice(1 - STEADY_COUNT), reading];
    const quick = middleOf(exact.slice(-QUICK_COUNT));
    if (Math.abs(quick - middleOf(exact)) > STEP_MS) exact = exact.slice(-QUICK_COUNT);
    offsetMs = exact.length < STEADY_FROM ? quick : middleOf(exact);
    isInDoubt = Math.abs(reading.offsetMs - offsetMs) > STEP_MS;
  }

  function addStepped(reading: Offset): void {
    exact = exact.filter(({ pageMs }) => reading.pageMs - pageMs <= EXACT_GAP_MS);
    stepped = [...stepped.filter(({ pageMs }) => reading.pageMs - pageMs <= STEPPED_WINDOW_MS), reading];
    if (exact.length === 0) offsetMs = Math.max(...stepped.map((one) => one.offsetMs));
  }

  function clear(): void {
    exact = [];
    stepped = [];
    offsetMs = undefined;
    isInDoubt = false;
  }

  return {
    add({ pageMs, audioSeconds, isExact }) {
      // After a block many wake-ups come at once, all with the same stamp.
      if (isExact && exact.at(-1)?.pageMs === pageMs) return;
      const reading = { pageMs, offsetMs: audioSeconds * 1000 - pageMs };
      if (offsetMs !== undefined && Math.abs(offsetMs - reading.offsetMs) > JUMP_MS) clear();
      if (isExact) addExact(reading);
      else addStepped(reading);
    },
    toAudio: (pageMs) => (offsetMs === undefined ? undefined : (pageMs + offsetMs) / 1000),
    get isInDoubt() {
      return isInDoubt;
    },
    clear,
  };
}

function middleOf(offsets: readonly Offset[]): number {
  const sorted = offsets.map((one) => one.offsetMs).sort((a, b) => a - b);
  return sorted[sorted.length >> 1]!;
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
