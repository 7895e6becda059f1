import type { CueSettings } from './cue-settings.ts';
import { cueTone } from './cue-tone.ts';
import type { SoundCue, SoundKind } from './press-sound.ts';
import { getWords, type WordSounds } from './sprite-pack.ts';

/** Samples to be heard at a delay after the cue's time. */
export interface CueSound {
  samples: Float32Array<ArrayBuffer>;
  sampleRate: number;
  delayMs: number;
}

/** Between a tone and the word after it, in milliseconds. */
const BREATH_MS = 40;
/** Words in quiet hours, as a part of their usual loudness. */
export const QUIET_WORD_RATIO = 0.35;

/** Tones already computed, so that every hold of a drill shares one. */
const tones = new Map<string, Float32Array<ArrayBuffer>>();
const quietWords = new WeakMap<Float32Array<ArrayBuffer>, Float32Array<ArrayBuffer>>();

/**
 * What a cue sounds as: its tone, its words, or its words after its tone. Words that no pack has are replaced by the tone.
 *
 * @param cue which cue
 * @param settings voice and quiet hours
 * @param words spoken words by text, or undefined while there are none
 * @param sampleRate samples per second for tones, hertz
 * @returns one or two sounds, in order
 */
export function cueSounds(
  cue: Pick<SoundCue, 'kind' | 'words'>,
  settings: Readonly<Pick<CueSettings, 'voice' | 'quiet'>>,
  words: WordSounds | undefined,
  sampleRate: number,
): CueSound[] {
  const word = settings.voice === 'tones' ? undefined : getWords(words, cue);
  const tone: CueSound = { samples: getTone(cue.kind, sampleRate, settings.quiet), sampleRate, delayMs: 0 };
  if (!word || !words) return [tone];
  const samples = settings.quiet ? soften(word) : word;
  const said: CueSound = { samples, sampleRate: words.sampleRate, delayMs: 0 };
  if (settings.voice === 'words') return [said];
  return [tone, { ...said, delayMs: Math.round((tone.samples.length / sampleRate) * 1000) + BREATH_MS }];
}

function getTone(kind: SoundKind, sampleRate: number, quiet: boolean): Float32Array<ArrayBuffer> {
  const key = `${kind} ${sampleRate} ${quiet}`;
  const known = tones.get(key);
  if (known) return known;
  const made = cueTone(kind, sampleRate, quiet);
  tones.set(key, made);
  return made;
}

function soften(samples: Float32Array<ArrayBuffer>): Float32Array<ArrayBuffer> {
  const known = quietWords.get(samples);
  if (known) return known;
  const made = samples.map((sample) => sample * QUIET_WORD_RATIO);
  quietWords.set(samples, made);
  return made;
}
