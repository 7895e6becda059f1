import type { TrendKind } from '@larkhold/engine';
import type { Words } from './create-words.ts';
import type { MessageKey } from './message-key.ts';
import { presentWords } from './present-words.ts';

/** How one trend is described and drawn. */
export interface TrendWords {
  name: string;
  /** What the number means. */
  about: string;
  /** A value in words. */
  format(value: number): string;
  /** A value as it is on the chart's scale. */
  toScale(value: number): number;
  /** What the scale counts. */
  unit: string;
  shape: 'bars' | 'line';
  /** Where the scale begins and ends, when it is not from nothing to the greatest. */
  range?: readonly [least: number, most: number];
}

interface Drawn {
  shape: TrendWords['shape'];
  unit?: Extract<MessageKey, `trend.unit${string}`>;
  format: 'duration' | 'seconds' | 'count' | 'ratio' | 'tenths';
  toScale?: (value: number) => number;
  range?: TrendWords['range'];
}

const drawn: Readonly<Record<TrendKind, Drawn>> = {
  hold: { shape: 'bars', unit: 'trend.unitMinutes', format: 'duration', toScale: (ms) => ms / 60_000 },
  longest: { shape: 'line', unit: 'trend.unitSeconds', format: 'seconds', toScale: (ms) => ms / 1000 },
  whole: { shape: 'line', unit: 'trend.unitSeconds', format: 'seconds', toScale: (ms) => ms / 1000 },
  arrows: { shape: 'bars', format: 'count' },
  load: { shape: 'bars', unit: 'trend.unitLoad', format: 'count' },
  monotony: { shape: 'line', unit: 'trend.unitRatio', format: 'ratio' },
  strain: { shape: 'line', unit: 'trend.unitStrain', format: 'count' },
  ratio: { shape: 'line', unit: 'trend.unitRatio', format: 'ratio' },
  feel: { shape: 'line', unit: 'trend.unitFeel', format: 'tenths', range: [1, 5] },
};

/**
 * How a trend is described and drawn.
 * @param kind which
 * @param words the language
 * @returns its name, what it means, and how a value reads
 */
export function trendWords(kind: TrendKind, words: Words = presentWords()): TrendWords {
  const { shape, unit, format, toScale = (value) => value, range } = drawn[kind];
  return {
    name: words.say(`trend.${kind}`),
    about: words.say(`trend.${kind}About`),
    format: words[format],
    unit: unit === undefined ? '' : words.say(unit),
    ...{ shape, toScale, range },
  };
}
