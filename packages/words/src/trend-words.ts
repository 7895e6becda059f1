import type { TrendKind } from '@larkhold/engine';
import { WORKLOAD_RATIO_CAUTION } from '@larkhold/engine';
import { formatCount, formatDuration, formatSeconds } from './format-for-people.ts';

const hundredths = new Intl.NumberFormat('en', { minimumFractionDigits: 2, maximumFractionDigits: 2 });
const tenths = new Intl.NumberFormat('en', { minimumFractionDigits: 1, maximumFractionDigits: 1 });

/** How one trend is told and drawn. */
export interface TrendWords {
  name: string;
  /** What the number means, where the name does not say it. */
  about?: string;
  /** A value in words. */
  format(value: number): string;
  /** A value as it stands on the chart's scale. */
  toScale(value: number): number;
  /** What the scale counts. */
  unit: string;
  shape: 'bars' | 'line';
  /** Where the scale begins and ends, when it is not from nothing to the greatest. */
  range?: readonly [least: number, most: number];
}

const same = (value: number): number => value;

/** How each trend is told and drawn. */
export const trendWords: Readonly<Record<TrendKind, TrendWords>> = {
  hold: {
    name: 'Time at full draw',
    about: 'Every hold of a day added up, as far as it was held.',
    unit: 'minutes',
    shape: 'bars',
    format: formatDuration,
    toScale: (ms) => ms / 60_000,
  },
  longest: {
    name: 'Longest clean hold',
    about: 'The longest hold of a day that was held in full.',
    unit: 'seconds',
    shape: 'line',
    format: formatSeconds,
    toScale: (ms) => ms / 1000,
  },
  arrows: {
    name: 'Arrows',
    about: 'As you wrote them down, of every kind.',
    ...{ unit: '', shape: 'bars', format: formatCount, toScale: same },
  },
  load: {
    name: 'Load',
    about: 'Effort times minutes, of drills, shooting and other work.',
    ...{ unit: 'effort × minutes', shape: 'bars', format: formatCount, toScale: same },
  },
  monotony: {
    name: 'Monotony',
    about: 'How alike the last seven days were: their mean load over its spread.',
    ...{ unit: 'ratio', shape: 'line', format: (value) => hundredths.format(value), toScale: same },
  },
  strain: {
    name: 'Strain',
    about: 'The load of the last seven days times their monotony.',
    ...{ unit: 'load × monotony', shape: 'line', format: formatCount, toScale: same },
  },
  ratio: {
    name: 'Acute:chronic ratio',
    about: `Mean load of the last 7 days over that of the last 28. ${WORKLOAD_RATIO_CAUTION}`,
    ...{ unit: 'ratio', shape: 'line', format: (value) => hundredths.format(value), toScale: same },
  },
  feel: {
    name: 'Feel',
    about: '1 is poor, 5 is very good.',
    ...{ unit: '1 to 5', shape: 'line', format: (value) => tenths.format(value), toScale: same },
    range: [1, 5],
  },
};
