import type { Cue, Timeline } from '@larkhold/engine';
import { type CueSettings, changeCueSettings, defaultCueSettings } from './cue-settings.ts';
import { cueSounds } from './cue-sound.ts';
import { encodeWebm } from './encode-webm.ts';
import { wavHeader, wavSamples } from './format-wav.ts';
import { loadSpritePack, ownPackUrl, type WordSounds } from './sprite-pack.ts';

/** How a cue track is rendered. */
export interface CueTrackOptions extends Partial<CueSettings> {
  /** The file's kind: `wav` when left out, which plays everywhere; `webm` (Opus) is many times smaller. */
  format?: 'wav' | 'webm';
  /** Samples per second, hertz; 24000 when left out. */
  sampleRate?: number;
  /** Called after each minute of sound with the part done, 0..1. */
  onProgress?: (doneRatio: number) => void;
  /** Ends the rendering. */
  signal?: AbortSignal;
}

/** Samples per second of a cue track, hertz: twice what the highest tone needs, and room for speech. */
export const CUE_TRACK_HZ = 24000;
/** Sound left after the last cue, in seconds. */
const TAIL_SECONDS = 3;
const CHUNK_SECONDS = 60;

/** Where a cue's samples are in a track. */
interface Placed {
  first: number;
  samples: Float32Array;
}

/**
 * A timeline's cues as a sound file, to be played with the screen locked or by another player.
 *
 * @param timeline whose cues
 * @param options voice, level, sample rate, progress and cancel
 * @returns a WAV file (16-bit mono) or a WebM file (Opus)
 * @throws RangeError when a setting is out of range or the browser cannot encode the format; the signal's reason when it is aborted
 */
export async function renderCueTrack(timeline: Timeline, options: CueTrackOptions = {}): Promise<Blob> {
  const sampleRate = options.sampleRate ?? CUE_TRACK_HZ;
  if (options.format === 'webm') return encodeWebm(renderChunks(timeline, options), sampleRate);
  const parts: BlobPart[] = [wavHeader(trackLength(timeline, sampleRate), sampleRate)];
  for await (const samples of renderChunks(timeline, options)) parts.push(wavSamples(samples));
  return new Blob(parts, { type: 'audio/wav' });
}

/**
 * How long a track is.
 *
 * @param timeline whose cues
 * @param sampleRate samples per second, hertz
 * @returns samples, with room for the last cue to end
 */
export function trackLength(timeline: Timeline, sampleRate: number): number {
  return Math.round((timeline.durationMs / 1000 + TAIL_SECONDS) * sampleRate);
}

/**
 * A track minute by minute: each cue's sound is made once and copied to its places.
 *
 * @param timeline whose cues
 * @param options as for `renderCueTrack`
 * @returns samples, -1..1, in order, without gap
 * @throws RangeError when a setting is out of range; the signal's reason when it is aborted
 */
export async function* renderChunks(timeline: Timeline, options: CueTrackOptions = {}): AsyncGenerator<Float32Array> {
  const { sampleRate = CUE_TRACK_HZ, onProgress, signal } = options;
  const { level, voice, quiet } = changeCueSettings(defaultCueSettings, {
    level: options.level ?? 1,
    voice: options.voice ?? defaultCueSettings.voice,
    quiet: options.quiet ?? defaultCueSettings.quiet,
  });
  signal?.throwIfAborted();
  const words = voice === 'tones' ? undefined : await loadTrackWords(sampleRate);
  const placed = placeCues(timeline.cues, { voice, quiet }, words, sampleRate);
  const length = trackLength(timeline, sampleRate);
  const chunkLength = CHUNK_SECONDS * sampleRate;
  for (let first = 0; first < length; first += chunkLength) {
    signal?.throwIfAborted();
    const chunk = new Float32Array(Math.min(chunkLength, length - first));
    for (const { first: at, samples } of placed) mix(chunk, samples, at - first, level);
    yield chunk;
    onProgress?.(Math.min(1, (first + chunkLength) / length));
    // The page stays alive, and a press on cancel is heard.
    await new Promise((resolve) => setTimeout(resolve, 0));
  }
}

function placeCues(
  cues: readonly Cue[],
  settings: Pick<CueSettings, 'voice' | 'quiet'>,
  words: WordSounds | undefined,
  sampleRate: number,
): Placed[] {
  return cues.flatMap((cue) =>
    cueSounds(cue, settings, words, sampleRate).map(({ samples, delayMs }) => ({
      first: Math.round(((cue.atMs + delayMs) / 1000) * sampleRate),
      samples,
    })),
  );
}

function mix(chunk: Float32Array, samples: Float32Array, at: number, level: number): void {
  const from = Math.max(0, -at);
  const to = Math.min(samples.length, chunk.length - at);
  for (let index = from; index < to; index += 1) chunk[at + index]! += samples[index]! * level;
}

async function loadTrackWords(sampleRate: number): Promise<WordSounds | undefined> {
  if (typeof OfflineAudioContext === 'undefined') return undefined;
  const audio = new OfflineAudioContext(1, 1, sampleRate);
  const decode = async (bytes: ArrayBuffer) => {
    const buffer = await audio.decodeAudioData(bytes);
    return { sampleRate: buffer.sampleRate, samples: buffer.getChannelData(0) };
  };
  // Without the words the tones replace them, as they do in the player.
  return loadSpritePack(ownPackUrl, decode).catch(() => undefined);
}
