import type { SoundKind } from './press-sound.ts';

/** One note: a sine with two softer partials that fade sooner, as of struck wood; gently begun and let ring. */
interface Note {
  atMs: number;
  durationMs: number;
  /** Where the pitch starts, in hertz. */
  hz: number;
  /** Where the pitch ends, in hertz; absent means it stays. */
  toHz?: number;
}

/** The highest pitch of any part of any tone, in hertz: older ears lose what lies above. */
export const HIGHEST_HZ = 2500;

/** From silence to full loudness, in milliseconds: long enough not to click, short enough to be on time. */
const ATTACK_MS = 9;
/** Of the lowest note; higher ones need less to be as loud. */
const PEAK_RATIO = 0.85;
const QUIET_RATIO = 0.3;
const QUIET_PITCH_RATIO = 0.5;
/** How loud a partial begins beside the ground tone, and how much faster it fades: bright when struck, plain when it rings out. */
const partials = [
  { times: 1, ratio: 1, fade: 0.8 },
  { times: 2, ratio: 0.28, fade: 2.6 },
  { times: 3, ratio: 0.08, fade: 5 },
] as const;
/** The ear adds up about this much time: a shorter note needs more to be as loud (from memory: temporal integration, some 200 ms; a note that fades needs a little longer). */
const EAR_MS = 300;
const LOWEST_HZ = 294;

/**
 * The notes of each cue. No two share both rhythm and direction, so that they are told apart by either alone; none repeats
 * a pulse three times at even distances or swings up and down like an alarm. Rising means work begins, falling means work ends.
 */
const notes: Record<SoundKind, readonly Note[]> = {
  ready: [
    { atMs: 0, durationMs: 160, hz: 392 },
    { atMs: 320, durationMs: 260, hz: 392 },
  ],
  draw: [{ atMs: 0, durationMs: 420, hz: 440, toHz: 880 }],
  hold: [
    { atMs: 0, durationMs: 110, hz: 660 },
    { atMs: 130, durationMs: 420, hz: 988 },
  ],
  half: [
    { atMs: 0, durationMs: 90, hz: 784 },
    { atMs: 180, durationMs: 90, hz: 784 },
  ],
  count: [{ atMs: 0, durationMs: 90, hz: 1047 }],
  call: [{ atMs: 0, durationMs: 200, hz: 587 }],
  letDown: [{ atMs: 0, durationMs: 620, hz: 784, toHz: 392 }],
  rest: [
    { atMs: 0, durationMs: 200, hz: 523 },
    { atMs: 240, durationMs: 340, hz: 392 },
  ],
  setRest: [
    { atMs: 0, durationMs: 180, hz: 659 },
    { atMs: 220, durationMs: 180, hz: 523 },
    { atMs: 440, durationMs: 400, hz: 392 },
  ],
  restOver: [
    { atMs: 0, durationMs: 120, hz: 523 },
    { atMs: 240, durationMs: 120, hz: 523 },
    { atMs: 480, durationMs: 220, hz: 659 },
  ],
  done: [
    { atMs: 0, durationMs: 260, hz: 523 },
    { atMs: 300, durationMs: 130, hz: 659 },
    { atMs: 470, durationMs: 260, hz: 784 },
    { atMs: 780, durationMs: 600, hz: 523 },
  ],
  mark: [{ atMs: 0, durationMs: 320, hz: 440 }],
  paused: [
    { atMs: 0, durationMs: 90, hz: 494 },
    { atMs: 150, durationMs: 420, hz: 330 },
  ],
  goesOn: [
    { atMs: 0, durationMs: 140, hz: 330 },
    { atMs: 170, durationMs: 300, hz: 494 },
  ],
  skipped: [
    { atMs: 0, durationMs: 80, hz: 440 },
    { atMs: 120, durationMs: 210, hz: 587 },
  ],
  moreRest: [
    { atMs: 0, durationMs: 260, hz: 392 },
    { atMs: 300, durationMs: 120, hz: 392 },
  ],
  lessRest: [
    { atMs: 0, durationMs: 120, hz: 392 },
    { atMs: 150, durationMs: 260, hz: 392 },
  ],
  stopAsked: [
    { atMs: 0, durationMs: 200, hz: 330, toHz: 294 },
    { atMs: 330, durationMs: 340, hz: 330, toHz: 294 },
  ],
  question: [
    { atMs: 0, durationMs: 180, hz: 440 },
    { atMs: 210, durationMs: 320, hz: 440, toHz: 587 },
  ],
  answer: [{ atMs: 0, durationMs: 110, hz: 523 }],
};

/**
 * The samples of a cue's tone, mono, -1..1. The same arguments give the same samples.
 *
 * @param kind which cue
 * @param sampleRate samples per second, in hertz
 * @param quiet true for the softer set an octave lower
 * @returns the samples; the first sounding one is the second
 * @throws RangeError when the sample rate is under 8000
 * @source own: pitches and rhythms are ours; the upper limit of 2.5 kHz leaves the range that ageing takes first
 */
export function cueTone(kind: SoundKind, sampleRate: number, quiet = false): Float32Array<ArrayBuffer> {
  if (!(sampleRate >= 8000)) throw new RangeError(`sampleRate is ${sampleRate}; it must be 8000 or more`);
  const score = notes[kind];
  const lengthMs = Math.max(...score.map((note) => note.atMs + note.durationMs));
  const samples = new Float32Array(Math.ceil((lengthMs / 1000) * sampleRate));
  for (const note of score) addNote(samples, note, sampleRate, quiet);
  return samples;
}

function addNote(samples: Float32Array, note: Note, sampleRate: number, quiet: boolean): void {
  const first = Math.round((note.atMs / 1000) * sampleRate);
  const count = Math.floor((note.durationMs / 1000) * sampleRate);
  const attackCount = (ATTACK_MS / 1000) * sampleRate;
  const peak = PEAK_RATIO * (quiet ? QUIET_RATIO : 1) * shortnessGain(note.durationMs);
  const pitchRatio = quiet ? QUIET_PITCH_RATIO : 1;
  const steady = evenGain(note.hz);
  let phase = 0;
  for (let index = 0; index < count && first + index < samples.length; index += 1) {
    const passedRatio = index / count;
    const hz = note.toHz === undefined ? note.hz : note.hz * (note.toHz / note.hz) ** passedRatio;
    const evenly = note.toHz === undefined ? steady : evenGain(hz);
    const level = peak * evenly * envelope(index, count, attackCount);
    samples[first + index]! += level * wave(phase, passedRatio, pitchRatio * hz);
    phase += (2 * Math.PI * pitchRatio * hz) / sampleRate;
  }
}

/** One sample of a note; a partial that older ears lose is left out. */
function wave(phase: number, passedRatio: number, hz: number): number {
  const sum = partials.reduce((all, { times, ratio, fade }) => {
    const isHeard = times * hz <= HIGHEST_HZ;
    return isHeard ? all + ratio * Math.exp(-fade * passedRatio) * Math.sin(times * phase) : all;
  }, 0);
  return sum / (1 + partials[1].ratio);
}

/**
 * How much a pitch is taken back so that it sounds as loud as the lowest note.
 * @source IEC 61672-1, A-weighting
 */
function evenGain(hz: number): number {
  return Math.min(1, LOWEST_WEIGHT / aWeight(hz));
}

function aWeight(hz: number): number {
  const square = hz ** 2;
  return (
    (12_194 ** 2 * square ** 2) /
    ((square + 20.6 ** 2) * Math.sqrt((square + 107.7 ** 2) * (square + 737.9 ** 2)) * (square + 12_194 ** 2))
  );
}

/** Reckoned once: every sample of a note that glides is compared with it. */
const LOWEST_WEIGHT = aWeight(LOWEST_HZ);

function shortnessGain(durationMs: number): number {
  return Math.sqrt(Math.max(1, EAR_MS / durationMs));
}

/** Raised-cosine attack and a raised-cosine end over the second half, so that nothing clicks. */
function envelope(index: number, count: number, attackCount: number): number {
  const rise = index < attackCount ? 0.5 - 0.5 * Math.cos((Math.PI * (index + 1)) / (attackCount + 1)) : 1;
  const half = count / 2;
  const fall = index < half ? 1 : 0.5 + 0.5 * Math.cos((Math.PI * (index - half)) / half);
  return rise * fall;
}
