import type { CueSound } from './cue-sound.ts';
import type { ArmedCue } from './plan-cues.ts';

interface Started {
  armed: ArmedCue;
  /** Where its first sample was put on the audio clock, seconds. */
  atSeconds: number;
  endSeconds: number;
  gain: GainNode;
  sources: AudioBufferSourceNode[];
}

/** The cues that are on the audio clock: those still to be heard and those sounding. */
export interface StartedCues {
  start(
    audio: BaseAudioContext,
    destination: AudioNode,
    armed: ArmedCue,
    sounds: readonly CueSound[],
    dueSeconds: number,
    earliestSeconds: number,
  ): void;
  /** Takes back what has not sounded yet. */
  takeBackFuture(nowSeconds: number): ArmedCue[];
  /** Takes back what has not sounded yet and is in the wrong place by more than the tolerance. */
  takeBackMisplaced(
    nowSeconds: number,
    toAudio: (pageMs: number) => number | undefined,
    toleranceSeconds: number,
  ): ArmedCue[];
  /** Silences everything, also what sounds now. */
  stopAll(nowSeconds: number): void;
  forgetEnded(nowSeconds: number): void;
  /** Whether this very cue is sounding or has just sounded: arming again must not say it twice. */
  hasBegun(armed: ArmedCue): boolean;
  count(): number;
}

/** Cutting a wave in its middle clicks; it is faded over this many seconds, well within a frame. */
const FADE_SECONDS = 0.008;
/** What is nearer than this cannot be taken back surely, in seconds. */
const TOO_NEAR_SECONDS = 0.03;
/** Two cues of one kind nearer than this are the same cue, in milliseconds. */
const SAME_MS = 100;
/** How long a cue is remembered after its end, in seconds. */
const REMEMBERED_SECONDS = 0.3;

/**
 * An empty set of started cues.
 *
 * @returns the set; audio times are seconds of one context's clock
 */
export function createStartedCues(): StartedCues {
  let all: Started[] = [];
  const buffers = new WeakMap<Float32Array<ArrayBuffer>, AudioBuffer>();

  function getBuffer(audio: BaseAudioContext, { samples, sampleRate }: CueSound): AudioBuffer {
    const known = buffers.get(samples);
    if (known) return known;
    const buffer = audio.createBuffer(1, samples.length, sampleRate);
    buffer.copyToChannel(samples, 0);
    buffers.set(samples, buffer);
    return buffer;
  }

  function takeBack(isTaken: (started: Started) => boolean): ArmedCue[] {
    const taken = all.filter(isTaken);
    all = all.filter((started) => !taken.includes(started));
    for (const { sources, gain } of taken) {
      for (const source of sources) source.stop();
      gain.disconnect();
    }
    return taken.map((started) => started.armed);
  }

  return {
    start(audio, destination, armed, sounds, dueSeconds, earliestSeconds) {
      const gain = audio.createGain();
      gain.connect(destination);
      const atSeconds = Math.max(dueSeconds, earliestSeconds);
      let endSeconds = atSeconds;
      const sources = sounds.map((sound) => {
        const source = audio.createBufferSource();
        source.buffer = getBuffer(audio, sound);
        source.connect(gain);
        source.start(atSeconds + sound.delayMs / 1000);
        endSeconds = Math.max(endSeconds, atSeconds + sound.delayMs / 1000 + source.buffer.duration);
        return source;
      });
      all.push({ armed, atSeconds, endSeconds, gain, sources });
    },
    takeBackFuture: (nowSeconds) => takeBack((started) => started.atSeconds > nowSeconds),
    takeBackMisplaced: (nowSeconds, toAudio, toleranceSeconds) =>
      takeBack((started) => {
        const due = toAudio(started.armed.dueMs);
        const isTakeable = started.atSeconds > nowSeconds + TOO_NEAR_SECONDS;
        return due !== undefined && isTakeable && Math.abs(due - started.atSeconds) > toleranceSeconds;
      }),
    stopAll(nowSeconds) {
      for (const { gain, sources, atSeconds } of all) {
        if (atSeconds > nowSeconds + FADE_SECONDS) gain.disconnect();
        gain.gain.setValueAtTime(1, nowSeconds);
        gain.gain.linearRampToValueAtTime(0, nowSeconds + FADE_SECONDS);
        for (const source of sources) source.stop(nowSeconds + FADE_SECONDS);
      }
      all = [];
    },
    forgetEnded(nowSeconds) {
      for (const started of all) if (started.endSeconds < nowSeconds) started.gain.disconnect();
      all = all.filter((started) => started.endSeconds >= nowSeconds - REMEMBERED_SECONDS);
    },
    hasBegun: (armed) =>
      all.some(
        (started) => started.armed.cue.kind === armed.cue.kind && Math.abs(started.armed.dueMs - armed.dueMs) < SAME_MS,
      ),
    count: () => all.length,
  };
}
