import type { DayStyle as DayInMessage } from '@larkhold/engine';

/** How a day is written: as in a message, or beside a chart: `tick` '25 Nov', `month` 'Nov 2026'. */
export type DayStyle = DayInMessage | 'tick' | 'month';

/** Metric or imperial, as the kit says. */
export type Units = 'metric' | 'imperial';

/** Numbers, times and days as one locale writes them. */
export interface Formats {
  /** `1250` as '1,250'. */
  count(value: number): string;
  /** To the tenth, without a tenth that is nothing: '7.5', '8'. */
  tenths(value: number): string;
  /** Milliseconds as seconds, to the tenth: '30 s', '7.5 s'. */
  seconds(ms: number): string;
  /** Milliseconds as '45 s', '2 min 5 s' under ten minutes, '28 min', '1 h 5 min'. */
  duration(ms: number): string;
  /** Milliseconds to the minute: '2 min', '1 h 5 min'; less than half a minute is '1 min'. */
  minutes(ms: number): string;
  /** Sets, reps and hold as archers write them: '2 × 10 × 30 s'. */
  reps(block: { sets: number; reps: number; holdMs: number }): string;
  /** Pounds-force as '38 lb', in metric as '38 lb (17.2 kg, 169 N)'. */
  weight(lbf: number, units: Units): string;
  /** Inches as '28.5 in' or '72.4 cm'. */
  drawLength(inches: number, units: Units): string;
  /** Metres as '2 m' or '6.6 ft'. */
  distance(metres: number, units: Units): string;
  /** A part of a whole, 0 to 1: '70 %'. */
  share(ratio: number): string;
  /** One thing over another: '1.25'. */
  ratio(ratio: number): string;
  /** Newton seconds: '850 N s', or '10.7 kN s' from ten thousand on. */
  impulse(newtonSeconds: number): string;
  /** A calendar day, ISO 8601. */
  day(day: string, style?: DayStyle): string;
  /** First and last of some calendar days, ISO 8601, without what both have in common: '23–29 November 2026'. */
  days(first: string, last: string, style: DayStyle): string;
  /** The time of an instant, ISO 8601 with offset, as it was stamped: '07:05'. */
  timeOfDay(instant: string): string;
  /** Several things in a sentence: 'a, b and c'. */
  list(things: readonly string[]): string;
  /** Several things in a row, beside a label or in a table: 'a, b, c'. */
  row(things: readonly string[]): string;
  /** One of several things in a sentence: 'a, b or c'. */
  either(things: readonly string[]): string;
}

/** No-break space: a number and its unit stay on one line. */
const NB = '\u00a0';
/** @source BIPM, The International System of Units, 9th edition 2019: 1 lb = 0.45359237 kg, standard gravity 9.80665 m/s². */
const KG_PER_LB = 0.453_592_37;
const N_PER_KGF = 9.806_65;
const CM_PER_INCH = 2.54;
const FEET_PER_METRE = 1 / 0.3048;

const dayStyles = {
  long: { weekday: 'long', day: 'numeric', month: 'long' },
  longYear: { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' },
  short: { weekday: 'short', day: 'numeric', month: 'short' },
  shortYear: { weekday: 'short', day: 'numeric', month: 'short', year: 'numeric' },
  year: { day: 'numeric', month: 'long', year: 'numeric' },
  plain: { day: 'numeric', month: 'long' },
  ofMonth: { weekday: 'short', day: 'numeric' },
  tick: { day: 'numeric', month: 'short' },
  month: { month: 'short', year: 'numeric' },
} as const satisfies Record<DayStyle, Intl.DateTimeFormatOptions>;

/**
 * The formats of a locale.
 * @param locale a tag that `Intl` accepts, as `localeOf` gives it
 * @returns every number, time and day as that locale writes it
 */
export function createFormats(locale: string): Formats {
  const number = (options: Intl.NumberFormatOptions) => {
    const format = new Intl.NumberFormat(locale, options);
    return (value: number): string => format.format(value);
  };
  const count = number({ maximumFractionDigits: 0 });
  const tenths = number({ maximumFractionDigits: 1 });
  const ratio = number({ minimumFractionDigits: 2, maximumFractionDigits: 2 });
  const days = new Map<DayStyle, Intl.DateTimeFormat>();
  const and = new Intl.ListFormat(locale, { type: 'conjunction' });
  const inRow = new Intl.ListFormat(locale, { type: 'unit' });
  const or = new Intl.ListFormat(locale, { type: 'disjunction' });

  const seconds = (ms: number): string => `${tenths(Math.round(ms / 100) / 10)}${NB}s`;
  const minutes = (ms: number): string => {
    const all = Math.max(1, Math.round(ms / 60_000));
    if (all < 60) return `${count(all)}${NB}min`;
    const rest = all % 60;
    return `${count(Math.floor(all / 60))}${NB}h${rest > 0 ? ` ${rest}${NB}min` : ''}`;
  };
  const duration = (ms: number): string => {
    const all = Math.round(ms / 1000);
    if (all < 60) return `${count(all)}${NB}s`;
    if (all >= 600) return minutes(ms);
    const rest = all % 60;
    return `${count(Math.floor(all / 60))}${NB}min${rest > 0 ? ` ${rest}${NB}s` : ''}`;
  };
  const weight = (lbf: number, units: Units): string => {
    const pounds = `${tenths(lbf)}${NB}lb`;
    if (units === 'imperial') return pounds;
    const kg = lbf * KG_PER_LB;
    return `${pounds} (${tenths(kg)}${NB}kg, ${count(kg * N_PER_KGF)}${NB}N)`;
  };
  const daysIn = (style: DayStyle): Intl.DateTimeFormat => {
    const format = days.get(style) ?? new Intl.DateTimeFormat(locale, { ...dayStyles[style], timeZone: 'UTC' });
    days.set(style, format);
    return format;
  };
  const noonOf = (iso: string): Date => new Date(`${iso}T12:00:00Z`);

  return {
    ...{ count, tenths, seconds, minutes, duration, weight, ratio },
    day: (iso, style = 'long') => daysIn(style).format(noonOf(iso)),
    days: (first, last, style) => daysIn(style).formatRange(noonOf(first), noonOf(last)),
    reps: ({ sets, reps, holdMs }) =>
      `${sets > 1 ? `${count(sets)}${NB}×${NB}` : ''}${count(reps)}${NB}×${NB}${seconds(holdMs)}`,
    drawLength: (inches, units) =>
      units === 'imperial' ? `${tenths(inches)}${NB}in` : `${tenths(toCentimetres(inches))}${NB}cm`,
    distance: (metres, units) =>
      units === 'imperial' ? `${tenths(metres * FEET_PER_METRE)}${NB}ft` : `${tenths(metres)}${NB}m`,
    share: (part) => `${count(part * 100)}${NB}%`,
    impulse: (newtonSeconds) =>
      newtonSeconds < 10_000 ? `${count(newtonSeconds)}${NB}N${NB}s` : `${tenths(newtonSeconds / 1000)}${NB}kN${NB}s`,
    timeOfDay: (instant) => /T(\d{2}:\d{2})/.exec(instant)?.[1] ?? '',
    list: (things) => and.format(things),
    row: (things) => inRow.format(things),
    either: (things) => or.format(things),
  };
}

/**
 * Inches in centimetres.
 * @param inches a length
 * @returns the same in centimetres, to the tenth
 */
export function toCentimetres(inches: number): number {
  return Math.round(inches * CM_PER_INCH * 10) / 10;
}

/**
 * Centimetres in inches.
 * @param centimetres a length
 * @returns the same in inches, to the hundredth
 */
export function toInches(centimetres: number): number {
  return Math.round((centimetres / CM_PER_INCH) * 100) / 100;
}
