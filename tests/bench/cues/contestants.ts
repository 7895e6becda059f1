import { createCuePlayer, cueTone } from '@larkhold/cues';
import type { Cue } from '@larkhold/engine';
import { Howl, Howler } from 'howler';
import * as Tone from 'tone';
import { captureOnsets, type OnsetCapture } from './onset-capture.ts';
import { plainOutput } from './plain-output.ts';

/** One way of playing cues at given times, with a capture on its way out. */
export interface Contestant {
  name: string;
  capture: OnsetCapture;
  /** Plays a cue at each page time `originMs + times[n]`, milliseconds. */
  begin(times: readonly number[], originMs: number): void;
}

/** What all of them play: the same short tone. */
const kind = 'count';

async function openContext(): Promise<{ audio: AudioContext; gain: GainNode }> {
  const audio = new AudioContext();
  await audio.resume();
  const gain = audio.createGain();
  leadOut(gain);
  return { audio, gain };
}

/** Whether all of this is kept from the loudspeaker. It is captured before. */
let isMuted = false;

function leadOut(gain: GainNode): void {
  const out = gain.context.createGain();
  out.gain.value = isMuted ? 0 : 1;
  gain.connect(out).connect(gain.context.destination);
}

function toneBuffer(audio: BaseAudioContext): AudioBuffer {
  const samples = cueTone(kind, audio.sampleRate);
  const buffer = audio.createBuffer(1, samples.length, audio.sampleRate);
  buffer.copyToChannel(samples, 0);
  return buffer;
}

function playAt(audio: AudioContext, gain: AudioNode, buffer: AudioBuffer, atSeconds: number): void {
  const source = audio.createBufferSource();
  source.buffer = buffer;
  source.connect(gain);
  source.start(atSeconds);
}

/** Each timer is set when the last one rings: lateness is passed on. */
async function chainedTimers(): Promise<Contestant> {
  const { audio, gain } = await openContext();
  const buffer = toneBuffer(audio);
  return {
    name: 'chained timers',
    capture: await captureOnsets(audio, gain, cueTone(kind, audio.sampleRate)),
    begin(times, originMs) {
      const next = (index: number): void => {
        const delayMs = index === 0 ? originMs + times[0]! - performance.now() : times[index]! - times[index - 1]!;
        setTimeout(() => {
          playAt(audio, gain, buffer, 0);
          if (index + 1 < times.length) next(index + 1);
        }, delayMs);
      };
      next(0);
    },
  };
}

/** All timers are set at the beginning; each calls the sound library's `play()`. */
async function absoluteTimers(): Promise<Contestant> {
  Howler.autoSuspend = false;
  Howler.volume(1);
  const bytes = await wavUrl();
  const sound = await new Promise<Howl>((resolve) => {
    const howl: Howl = new Howl({ src: [bytes], format: ['wav'], pool: 20, onload: () => resolve(howl) });
  });
  await Howler.ctx.resume();
  Howler.masterGain.disconnect();
  leadOut(Howler.masterGain);
  return {
    name: 'absolute timers + play()',
    capture: await captureOnsets(Howler.ctx, Howler.masterGain, cueTone(kind, Howler.ctx.sampleRate)),
    begin(times, originMs) {
      for (const atMs of times) setTimeout(() => sound.play(), originMs + atMs - performance.now());
    },
  };
}

async function wavUrl(): Promise<string> {
  const { renderCueTrack } = await import('@larkhold/cues');
  const blob = await renderCueTrack({ steps: [], cues: [{ atMs: 0, kind }], durationMs: 0 }, { level: 1 });
  const reader = new FileReader();
  return new Promise((resolve) => {
    reader.onload = () => resolve(String(reader.result));
    reader.readAsDataURL(blob);
  });
}

/** The transport of a general-purpose scheduling library, with its own defaults and the true start. */
async function transport(): Promise<Contestant> {
  const { audio } = await openContext();
  // Native nodes throughout, so that the capture is the same for everyone.
  Tone.setContext(new Tone.Context({ context: audio, clockSource: 'worker' }));
  const gain = audio.createGain();
  leadOut(gain);
  const buffer = toneBuffer(audio);
  return {
    name: 'tone transport',
    capture: await captureOnsets(audio, gain, cueTone(kind, audio.sampleRate)),
    begin(times, originMs) {
      const { contextTime = 0, performanceTime = 0 } = audio.getOutputTimestamp();
      const originSeconds = contextTime + (originMs - performanceTime) / 1000;
      const player = Tone.getTransport();
      for (const atMs of times) player.schedule((seconds) => playAt(audio, gain, buffer, seconds), atMs / 1000);
      player.start(originSeconds, 0);
    },
  };
}

/** This product. */
async function larkhold(): Promise<Contestant> {
  const { audio, gain } = await openContext();
  const player = createCuePlayer({ level: 1 }, { output: plainOutput(audio, gain) });
  await player.unlock();
  return {
    name: 'larkhold cues',
    capture: await captureOnsets(audio, gain, cueTone(kind, audio.sampleRate)),
    begin: (times, originMs) =>
      player.arm(
        times.map((atMs): Cue => ({ atMs, kind })),
        originMs,
      ),
  };
}

/**
 * Everyone, each with an audio context of its own in this one page.
 * @param isSilent keeps all of them from the loudspeaker
 * @returns them, ready to begin
 */
export async function openContestants(isSilent: boolean): Promise<Contestant[]> {
  isMuted = isSilent;
  return [await chainedTimers(), await absoluteTimers(), await transport(), await larkhold()];
}
