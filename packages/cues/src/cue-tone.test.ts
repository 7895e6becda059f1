import { describe, expect, it } from 'vitest';
import { cueTone, HIGHEST_HZ } from './cue-tone.ts';
import { pressSounds, type SoundKind } from './press-sound.ts';

const kinds: SoundKind[] = [
  ...pressSounds,
  'mark',
  'ready',
  'draw',
  'hold',
  'half',
  'count',
  'call',
  'letDown',
  'rest',
  'setRest',
  'restOver',
  'done',
];
const sets = kinds.flatMap((kind) => [false, true].map((quiet) => ({ kind, quiet })));
const sampleRate = 8000;

/** Power at each whole frequency step, by the definition of the discrete Fourier transform. */
function powerBy(samples: Float32Array, stepHz: number): { hz: number; power: number }[] {
  const result = [];
  for (let hz = stepHz; hz < sampleRate / 2; hz += stepHz) {
    let re = 0;
    let im = 0;
    for (const [index, sample] of samples.entries()) {
      re += sample * Math.cos((2 * Math.PI * hz * index) / sampleRate);
      im += sample * Math.sin((2 * Math.PI * hz * index) / sampleRate);
    }
    result.push({ hz, power: re * re + im * im });
  }
  return result;
}

const sum = (values: { power: number }[]) => values.reduce((total, { power }) => total + power, 0);

describe('cueTone', () => {
  // 2.5 kHz: the limit set for older ears in this product's own requirements.
  it.each(sets)('keeps $kind (quiet: $quiet) under 2.5 kHz', ({ kind, quiet }) => {
    const powers = powerBy(cueTone(kind, sampleRate, quiet), 20);
    const above = sum(powers.filter(({ hz }) => hz > 2500));
    expect(HIGHEST_HZ).toBe(2500);
    expect(above / sum(powers)).toBeLessThan(0.001);
  });

  it.each(sets)('begins $kind (quiet: $quiet) within 2 ms and without a click', ({ kind, quiet }) => {
    const samples = cueTone(kind, 48000, quiet);
    const peak = samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
    const first = samples.findIndex((sample) => Math.abs(sample) > peak / 100);
    expect(first / 48).toBeLessThanOrEqual(2);
    expect(Math.abs(samples.at(0) ?? 1)).toBeLessThan(0.001);
    expect(Math.abs(samples.at(-1) ?? 1)).toBeLessThan(0.001);
    // Common practice, no source: a rise shorter than about 5 ms is heard as a click.
    const reached = samples.findIndex((sample) => Math.abs(sample) > peak * 0.9);
    expect(reached / 48).toBeGreaterThan(3);
    expect(peak).toBeLessThanOrEqual(0.92); // so that nothing clips
  });

  it('makes each kind another sound', () => {
    const prints = kinds.map((kind) => [...cueTone(kind, sampleRate)].map((sample) => sample.toFixed(3)).join(' '));
    expect(new Set(prints).size).toBe(kinds.length);
  });

  it.each(kinds)('makes %s softer and lower for quiet hours', (kind) => {
    const loudness = (samples: Float32Array) => Math.sqrt(samples.reduce((total, s) => total + s * s, 0));
    const centre = (samples: Float32Array) => {
      const powers = powerBy(samples, 20);
      return powers.reduce((total, { hz, power }) => total + hz * power, 0) / sum(powers);
    };
    const plain = cueTone(kind, sampleRate);
    const quiet = cueTone(kind, sampleRate, true);
    expect(loudness(quiet)).toBeLessThan(loudness(plain) / 2);
    expect(centre(quiet)).toBeLessThan(centre(plain) * 0.7);
  });

  /** A-weighting of a frequency, as a ratio (IEC 61672-1:2013, annex E; 1 at 1 kHz). */
  function aWeight(hz: number): number {
    const [a, b, c, d] = [20.6 ** 2, 107.7 ** 2, 737.9 ** 2, 12_194 ** 2];
    const square = hz ** 2;
    const ratio = (d * square ** 2) / ((square + a) * Math.sqrt((square + b) * (square + c)) * (square + d));
    return 10 ** (2 / 20) * ratio;
  }

  /** The loudest fifth of a second of a tone, decibels, weighted as the ear hears: about what it adds up (from memory). */
  function loudnessOf(samples: Float32Array): number {
    const width = sampleRate / 5;
    let loudest = 0;
    for (let from = 0; from === 0 || from + width / 2 <= samples.length; from += width / 4) {
      const part = samples.subarray(from, from + width);
      let power = 0;
      for (let hz = sampleRate / width; hz < 2600; hz += sampleRate / width)
        power += powerAt(part, hz) * aWeight(hz) ** 2;
      loudest = Math.max(loudest, power);
    }
    return 10 * Math.log10(loudest);
  }

  /** Power at one frequency by Goertzel's recurrence, the cheap way to the same as `powerBy`. */
  function powerAt(samples: Float32Array, hz: number): number {
    const turn = 2 * Math.cos((2 * Math.PI * hz) / sampleRate);
    let [last, before] = [0, 0];
    for (const sample of samples) [last, before] = [sample + turn * last - before, last];
    return last ** 2 + before ** 2 - turn * last * before;
  }

  // Asked of this product: cues are equally loud within 3 dB; nothing is piercing. In quiet hours they are low, and the ear (and the weighting) steeper.
  it.each([
    [false, 3],
    [true, 4],
  ] as const)('makes every cue as loud as the others, quiet %s: within %d dB', (quiet, mostDb) => {
    const loud = kinds.map((kind) => loudnessOf(cueTone(kind, sampleRate, quiet)));
    expect(Math.max(...loud) - Math.min(...loud)).toBeLessThanOrEqual(mostDb);
  });

  it.each(kinds)('%s is not piercing: its weight is below 1.2 kHz', (kind) => {
    const powers = powerBy(cueTone(kind, sampleRate), 20);
    expect(powers.reduce((total, { hz, power }) => total + hz * power, 0) / sum(powers)).toBeLessThan(1200);
  });

  /** The pulses of a tone: from when to when, milliseconds, and the pitch at both ends, semitones above 100 Hz. */
  function pulsesOf(kind: SoundKind) {
    const spans = rhythm(kind);
    const samples = cueTone(kind, sampleRate);
    const pitch = (fromMs: number) => {
      // By crossings of zero from below within 40 ms.
      const part = samples.subarray((fromMs * sampleRate) / 1000, ((fromMs + 40) * sampleRate) / 1000);
      const ups = [...part.keys()].filter((at) => at > 0 && part[at - 1]! < 0 && part[at]! >= 0);
      const hz = ((ups.length - 1) * sampleRate) / Math.max(1, (ups.at(-1) ?? 1) - (ups[0] ?? 0));
      return 12 * Math.log2(hz / 100);
    };
    let atMs = 0;
    return spans.flatMap((spanMs, index) => {
      const fromMs = atMs;
      atMs += spanMs;
      return index % 2 === 0 ? [{ fromMs, spanMs, first: pitch(fromMs + 10), last: pitch(fromMs + spanMs - 60) }] : [];
    });
  }

  // Common practice, no source: a difference of 60 ms in rhythm or of three semitones is heard without training.
  it('tells any two cues apart by rhythm or by pitch', () => {
    const heard = kinds.map((kind) => ({ kind, pulses: pulsesOf(kind) }));
    const alike = heard.flatMap((one, index) =>
      heard.slice(index + 1).flatMap((other) => {
        if (one.pulses.length !== other.pulses.length) return [];
        const far = one.pulses.some((pulse, at) => {
          const its = other.pulses[at]!;
          const ms = Math.max(Math.abs(pulse.fromMs - its.fromMs), Math.abs(pulse.spanMs - its.spanMs));
          const semitones = Math.max(Math.abs(pulse.first - its.first), Math.abs(pulse.last - its.last));
          return ms >= 60 || semitones >= 3;
        });
        return far ? [] : [`${one.kind} and ${other.kind}`];
      }),
    );
    expect(alike).toEqual([]);
  });

  /** Where a tone sounds and where it pauses, milliseconds: [sounds, pauses, sounds …]. */
  function rhythm(kind: SoundKind): number[] {
    const samples = cueTone(kind, sampleRate);
    const spans: number[] = [];
    let isSound = true;
    let from = 0;
    for (let at = 0; at < samples.length; at += 40) {
      const peak = samples.subarray(at, at + 40).reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
      if (peak > 0.02 !== isSound) {
        spans.push(((at - from) * 1000) / sampleRate);
        isSound = !isSound;
        from = at;
      }
    }
    return [...spans, ((samples.length - from) * 1000) / sampleRate];
  }

  // From memory: evacuation (ISO 8201) is three pulses of 0.5 s with 0.5 s between; carbon monoxide four of 0.1 s; a medical alarm
  // (IEC 60601-1-8) three or more pulses of 75 to 250 ms alike. All of them repeat pulses of one length with one pause between.
  it.each(kinds)('%s has no three pulses alike at even distances, as alarms have', (kind) => {
    const spans = rhythm(kind);
    const pulses = spans.filter((_, index) => index % 2 === 0);
    const pauses = spans.filter((_, index) => index % 2 === 1);
    const isAlike = (a: number, b: number) => Math.abs(a - b) <= 0.1 * Math.max(a, b);
    for (let index = 2; index < pulses.length; index += 1) {
      const isEven = isAlike(pauses[index - 2]!, pauses[index - 1]!);
      const areAlike = isAlike(pulses[index - 2]!, pulses[index - 1]!) && isAlike(pulses[index - 1]!, pulses[index]!);
      expect(isEven && areAlike).toBe(false);
    }
  });

  it('gives the same samples each time and refuses a sample rate that is not a number', () => {
    expect(cueTone('hold', 24000)).toEqual(cueTone('hold', 24000));
    expect(() => cueTone('hold', Number.NaN)).toThrow(RangeError);
  });
});
