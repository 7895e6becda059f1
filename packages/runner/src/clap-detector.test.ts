import { cueTone } from '@larkhold/cues';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createClapDetector } from './clap-detector.ts';

// The sounds are made here: a clap is a burst of noise that dies away in some ten milliseconds. From memory, no source.
const RATE = 48_000;

/** Noise that is the same at every run. */
function noise(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) | 0;
    return state / 2 ** 31;
  };
}

function room(seconds: number, loudness = 0.002, seed = 1): Float32Array {
  const next = noise(seed);
  return Float32Array.from({ length: Math.round(seconds * RATE) }, () => next() * loudness);
}

function addClap(sound: Float32Array, atSeconds: number, loudness = 0.6): void {
  const next = noise(7);
  const start = Math.round(atSeconds * RATE);
  for (let index = 0; index < 0.12 * RATE && start + index < sound.length; index++) {
    const seconds = index / RATE;
    sound[start + index]! += next() * loudness * Math.min(1, seconds / 0.001) * Math.exp(-seconds / 0.012);
  }
}

function addTone(sound: Float32Array, fromSeconds: number, seconds: number, hertz: number, loudness = 0.7): void {
  const start = Math.round(fromSeconds * RATE);
  for (let index = 0; index < seconds * RATE && start + index < sound.length; index++) {
    const at = index / RATE;
    const edge = Math.min(1, at / 0.005, (seconds - at) / 0.005);
    sound[start + index]! += Math.sin(2 * Math.PI * hertz * at) * loudness * edge;
  }
}

describe('createClapDetector', () => {
  it('hears every clap, within 10 ms of where it began', () => {
    const times = [0.5, 1.1, 1.9, 2.4, 3.3, 4];
    const sound = room(5);
    for (const [index, time] of times.entries()) addClap(sound, time, 0.2 + index * 0.12);
    const heard = createClapDetector(RATE).hear(sound);
    expect(heard.length).toBe(times.length);
    for (const [index, time] of times.entries()) expect(Math.abs(heard[index]! - time)).toBeLessThan(0.01);
  });

  it('hears the same however the sound is cut into pieces', () => {
    const sound = room(2);
    addClap(sound, 0.4);
    addClap(sound, 1.2);
    const whole = createClapDetector(RATE).hear(sound);
    expect(whole.length).toBe(2);
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 5000 }), { minLength: 1, maxLength: 40 }), (lengths) => {
        const detector = createClapDetector(RATE);
        const heard: number[] = [];
        let from = 0;
        for (const length of lengths) {
          heard.push(...detector.hear(sound.subarray(from, from + length)));
          from += length;
        }
        heard.push(...detector.hear(sound.subarray(from)));
        expect(heard).toEqual(whole);
      }),
      { numRuns: 20 },
    );
  });

  it('takes a clap and its echo for one', () => {
    const sound = room(1.5);
    addClap(sound, 0.5);
    addClap(sound, 0.62, 0.3);
    expect(createClapDetector(RATE).hear(sound).length).toBe(1);
  });

  it('does not take tones for claps, as the cues are tones of up to 2.5 kHz', () => {
    for (const hertz of [220, 440, 880, 1320, 1760, 2500]) {
      for (const seconds of [0.2, 0.5]) {
        const sound = room(2);
        addTone(sound, 0.5, seconds, hertz);
        expect(createClapDetector(RATE).hear(sound), `${hertz} Hz, ${seconds} s`).toEqual([]);
      }
    }
  });

  it('does not take one of the cues for a clap, loud or quiet', () => {
    const kinds = ['ready', 'draw', 'hold', 'half', 'count', 'call', 'letDown', 'rest', 'setRest', 'restOver', 'done'];
    for (const kind of kinds as Parameters<typeof cueTone>[0][]) {
      for (const isQuiet of [false, true]) {
        const sound = room(3);
        for (const [index, value] of cueTone(kind, RATE, isQuiet).entries()) sound[RATE / 2 + index]! += value;
        expect(createClapDetector(RATE).hear(sound), kind).toEqual([]);
      }
    }
  });

  it('does not take a short dull knock, as of a foot on the floor, for a clap', () => {
    const sound = room(2);
    for (let index = 0; index < 0.1 * RATE; index++) {
      const seconds = index / RATE;
      const edge = Math.min(1, seconds / 0.003);
      sound[RATE + index]! += 0.8 * edge * Math.sin(2 * Math.PI * 180 * seconds) * Math.exp(-seconds / 0.02);
    }
    expect(createClapDetector(RATE).hear(sound)).toEqual([]);
  });

  it('does not take a sharp sound that dies away slowly, as of poured gravel, for a clap', () => {
    const sound = room(2);
    for (const [index, value] of room(1, 0.5, 5).entries()) {
      const seconds = index / RATE;
      // A first crack sets the peak; what follows it is too long for hands.
      sound[RATE / 2 + index]! += value * (Math.exp(-seconds / 0.3) + Math.exp(-seconds / 0.004));
    }
    expect(createClapDetector(RATE).hear(sound)).toEqual([]);
  });

  it('does not take a noise that comes and stays for a clap, and hears claps over it afterwards', () => {
    const sound = room(4);
    const fan = room(3, 0.05, 3);
    for (const [index, value] of fan.entries()) sound[RATE + index]! += value;
    addClap(sound, 3.2, 0.9);
    const heard = createClapDetector(RATE).hear(sound);
    expect(heard.length).toBe(1);
    expect(heard[0]).toBeCloseTo(3.2, 1);
  });

  it('hears nothing in silence, and refuses a rate that is not a number', () => {
    expect(createClapDetector(RATE).hear(new Float32Array(RATE))).toEqual([]);
    expect(() => createClapDetector(0)).toThrow(RangeError);
  });
});
