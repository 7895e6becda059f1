import { type Language, presentWords } from '@larkhold/words';
import type { SoundCue, SoundKind } from './press-sound.ts';

/** Where a phrase is in a pack's sound file. */
export interface Sprite {
  /** As cues bring them, in English, whatever language is heard for them. */
  words: string;
  startMs: number;
  durationMs: number;
}

/** What a pack's `pack.json` says: a language, its sound files in order of preference, its phrases. */
export interface SpritePack {
  format: 'larkhold-sprites';
  version: 1;
  /** A BCP 47 language tag. */
  language: string;
  /** File names beside `pack.json`, all with the same sound; the first that can be decoded is used. */
  files: string[];
  /** The phrase for a cue that brings no words of its own. */
  kinds: Partial<Record<SoundKind, string>>;
  sprites: Sprite[];
}

/** Decoded spoken words, ready to sound. */
export interface WordSounds {
  sampleRate: number;
  byWords: ReadonlyMap<string, Float32Array<ArrayBuffer>>;
  byKind: Partial<Record<SoundKind, string>>;
}

/** Turns the bytes of a sound file into mono samples. */
export type DecodeSound = (bytes: ArrayBuffer) => Promise<{ sampleRate: number; samples: Float32Array<ArrayBuffer> }>;

/** The part of a phrase's start that is below this is cut, so that the word begins at its cue. */
const SILENCE_LEVEL = 0.01;

/**
 * The spoken words that come with this package: in the present language, or in English where that one has none.
 *
 * @param name of a file of the pack
 * @returns where it is found
 */
export function ownPackUrl(name: string): URL {
  return (packs[presentWords().language] ?? englishPackUrl)(name);
}

// Written out one by one, so that a bundler sees each file; never inlined, so that no data: URL is fetched under a strict policy.
function englishPackUrl(name: string): URL {
  if (name === 'pack.json') return new URL('../sprites/en/pack.json?no-inline', import.meta.url);
  if (name === 'pack.webm') return new URL('../sprites/en/pack.webm?no-inline', import.meta.url);
  return new URL('../sprites/en/pack.mp3?no-inline', import.meta.url);
}

function germanPackUrl(name: string): URL {
  if (name === 'pack.json') return new URL('../sprites/de/pack.json?no-inline', import.meta.url);
  if (name === 'pack.webm') return new URL('../sprites/de/pack.webm?no-inline', import.meta.url);
  return new URL('../sprites/de/pack.mp3?no-inline', import.meta.url);
}

const packs: Partial<Record<Language, (name: string) => URL>> = { de: germanPackUrl };

/**
 * Fetches and decodes a pack.
 *
 * @param urlOf where a file of the pack is found, by its name
 * @param decode turns a sound file into samples
 * @returns the words
 * @throws TypeError when the pack cannot be fetched, read or decoded
 */
export async function loadSpritePack(urlOf: (name: string) => URL | string, decode: DecodeSound): Promise<WordSounds> {
  const pack = checkPack(await (await get(urlOf('pack.json'))).json());
  let cause: unknown;
  for (const name of pack.files) {
    try {
      const sound = await decode(await (await get(urlOf(name))).arrayBuffer());
      return cutSprites(pack, sound);
    } catch (error) {
      cause = error;
    }
  }
  throw new TypeError('no sound file of the sprite pack could be decoded', { cause });
}

/**
 * Cuts a pack's sound into its phrases.
 *
 * @param pack which phrase is where
 * @param sound the decoded file, mono
 * @returns the words, each beginning with its first audible sample
 */
export function cutSprites(
  pack: SpritePack,
  sound: { sampleRate: number; samples: Float32Array<ArrayBuffer> },
): WordSounds {
  const { sampleRate, samples } = sound;
  const byWords = new Map<string, Float32Array<ArrayBuffer>>();
  for (const { words, startMs, durationMs } of pack.sprites) {
    const first = Math.round((startMs / 1000) * sampleRate);
    const end = Math.min(samples.length, first + Math.round((durationMs / 1000) * sampleRate));
    const audible = firstAudible(samples, first, end);
    // A view and no copy: the words come in the first draw of a drill, which must not wait for them.
    if (audible !== undefined) byWords.set(wordKey(words), samples.subarray(Math.max(first, audible - 1), end));
  }
  return { sampleRate, byWords, byKind: pack.kinds };
}

function firstAudible(samples: Float32Array, from: number, to: number): number | undefined {
  for (let at = from; at < to; at += 1) if (Math.abs(samples[at]!) > SILENCE_LEVEL) return at;
  return undefined;
}

/**
 * The spoken form of a cue.
 *
 * @param words the loaded words, or undefined
 * @param cue its own words count first, put together from the pack's phrases where need be; then its kind's phrase, except for a call
 * @returns the samples, or undefined where the pack does not have all of the words
 */
export function getWords(
  words: WordSounds | undefined,
  cue: Pick<SoundCue, 'kind' | 'words'>,
): Float32Array<ArrayBuffer> | undefined {
  if (!words) return undefined;
  const own = cue.words === undefined ? undefined : joinPhrases(words, wordKey(cue.words));
  if (own || cue.kind === 'call') return own;
  const kindWords = words.byKind[cue.kind];
  return kindWords === undefined ? undefined : words.byWords.get(wordKey(kindWords));
}

/** Phrases already put together; the same array each time, so that it becomes one buffer. */
const joined = new WeakMap<WordSounds, Map<string, Float32Array<ArrayBuffer>>>();

/** The longest phrase first, then the rest; all of the words or none. */
function joinPhrases(words: WordSounds, text: string): Float32Array<ArrayBuffer> | undefined {
  const known = words.byWords.get(text) ?? joined.get(words)?.get(text);
  if (known) return known;
  const parts: Float32Array<ArrayBuffer>[] = [];
  let left = text.split(' ');
  while (left.length > 0) {
    let length = left.length;
    while (length > 0 && !words.byWords.has(left.slice(0, length).join(' '))) length -= 1;
    if (length === 0) return undefined;
    parts.push(words.byWords.get(left.slice(0, length).join(' '))!);
    left = left.slice(length);
  }
  const whole = new Float32Array(parts.reduce((count, part) => count + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  joined.set(words, (joined.get(words) ?? new Map()).set(text, whole));
  return whole;
}

/** Case and closing points do not make another phrase. */
function wordKey(words: string): string {
  return words
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

async function get(url: URL | string): Promise<Response> {
  const response = await fetch(url);
  if (!response.ok) throw new TypeError(`the sprite pack answered ${response.status}`);
  return response;
}

function checkPack(value: unknown): SpritePack {
  const pack = value as Partial<SpritePack> | null;
  if (pack?.format !== 'larkhold-sprites' || pack.version !== 1)
    throw new TypeError('this is no sprite pack of version 1');
  if (!Array.isArray(pack.files) || !Array.isArray(pack.sprites))
    throw new TypeError('the sprite pack lacks its lists');
  return { kinds: {}, language: 'en', ...pack } as SpritePack;
}
