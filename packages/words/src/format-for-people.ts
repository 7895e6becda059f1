/** Metric or imperial, as the kit says. */
export type Units = 'metric' | 'imperial';

/** No-break space: a number and its unit stay on one line. */
const NB = '\u00a0';
/** @source BIPM, The International System of Units, 9th edition 2019: 1 lb = 0.45359237 kg, standard gravity 9.80665 m/s². */
const KG_PER_LB = 0.453_592_37;
const N_PER_KGF = 9.806_65;
const CM_PER_INCH = 2.54;
const FEET_PER_METRE = 1 / 0.3048;

/** The words are English, so numbers and days follow the archer's own kind of English. */
const locale = /^en\b/.test(globalThis.navigator?.language ?? '') ? globalThis.navigator.language : 'en-GB';
const whole = new Intl.NumberFormat(locale, { maximumFractionDigits: 0 });
const tenths = new Intl.NumberFormat(locale, { maximumFractionDigits: 1 });
const hundredths = new Intl.NumberFormat(locale, { minimumFractionDigits: 2, maximumFractionDigits: 2 });
const dayLong = new Intl.DateTimeFormat(locale, { weekday: 'long', day: 'numeric', month: 'long', timeZone: 'UTC' });
const dayShort = new Intl.DateTimeFormat(locale, { weekday: 'short', day: 'numeric', month: 'short', timeZone: 'UTC' });
const dayYear = new Intl.DateTimeFormat(locale, { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' });

/**
 * A count.
 * @param value a whole number
 * @returns '1,250'
 */
export function formatCount(value: number): string {
  return whole.format(value);
}

/**
 * A count with its noun.
 * @param value a whole number
 * @param one the singular
 * @param many the plural, when it is not the singular with an s
 * @returns '1 rep', '12 reps'
 */
export function formatCounted(value: number, one: string, many = `${one}s`): string {
  return `${whole.format(value)}${NB}${value === 1 ? one : many}`;
}

/**
 * A stretch of time in seconds, to the tenth.
 * @param ms milliseconds
 * @returns '30 s', '7.5 s'
 */
export function formatSeconds(ms: number): string {
  return `${tenths.format(Math.round(ms / 100) / 10)}${NB}s`;
}

/**
 * How long something takes.
 * @param ms milliseconds
 * @returns '45 s', '2 min 5 s' under ten minutes, '28 min', '1 h 5 min'
 */
export function formatDuration(ms: number): string {
  const seconds = Math.round(ms / 1000);
  if (seconds < 60) return `${whole.format(seconds)}${NB}s`;
  if (seconds < 600) {
    const rest = seconds % 60;
    return `${whole.format(Math.floor(seconds / 60))}${NB}min${rest > 0 ? ` ${rest}${NB}s` : ''}`;
  }
  return formatMinutes(ms);
}

/**
 * How long something takes, to the minute.
 * @param ms milliseconds
 * @returns '2 min', '1 h 5 min'; less than half a minute is '1 min'
 */
export function formatMinutes(ms: number): string {
  const minutes = Math.max(1, Math.round(ms / 60_000));
  if (minutes < 60) return `${whole.format(minutes)}${NB}min`;
  const rest = minutes % 60;
  return `${whole.format(Math.floor(minutes / 60))}${NB}h${rest > 0 ? ` ${rest}${NB}min` : ''}`;
}

/**
 * Sets, reps and hold as archers write them.
 * @param block today's or the file's numbers; the hold in milliseconds
 * @returns '5 × 5 s', '2 × 10 × 30 s'
 */
export function formatReps(block: { sets: number; reps: number; holdMs: number }): string {
  const sets = block.sets > 1 ? `${whole.format(block.sets)}${NB}×${NB}` : '';
  return `${sets}${whole.format(block.reps)}${NB}×${NB}${formatSeconds(block.holdMs)}`;
}

/**
 * A draw weight in the trade's unit, with what it is in metric where that is wanted.
 * @param lbf pounds-force
 * @param units the archer's
 * @returns '38 lb', or '38 lb (17.2 kg, 169 N)'
 */
export function formatWeight(lbf: number, units: Units): string {
  const pounds = `${tenths.format(lbf)}${NB}lb`;
  if (units === 'imperial') return pounds;
  const kg = lbf * KG_PER_LB;
  return `${pounds} (${tenths.format(kg)}${NB}kg, ${whole.format(kg * N_PER_KGF)}${NB}N)`;
}

/**
 * A draw length.
 * @param inches as bows are sold
 * @param units the archer's
 * @returns '28.5 in', or '72.4 cm'
 */
export function formatLength(inches: number, units: Units): string {
  return units === 'imperial' ? `${tenths.format(inches)}${NB}in` : `${tenths.format(toCentimetres(inches))}${NB}cm`;
}

/**
 * A distance in a room or on a field.
 * @param metres how far
 * @param units the archer's
 * @returns '2 m', or '6.6 ft'
 */
export function formatDistance(metres: number, units: Units): string {
  return units === 'imperial' ? `${tenths.format(metres * FEET_PER_METRE)}${NB}ft` : `${tenths.format(metres)}${NB}m`;
}

/** @param inches a length. @returns the same in centimetres, to the tenth. */
export function toCentimetres(inches: number): number {
  return Math.round(inches * CM_PER_INCH * 10) / 10;
}

/** @param centimetres a length. @returns the same in inches, to the hundredth. */
export function toInches(centimetres: number): number {
  return Math.round((centimetres / CM_PER_INCH) * 100) / 100;
}

/**
 * A part of a whole.
 * @param ratio 0 to 1
 * @returns '70 %'
 */
export function formatShare(ratio: number): string {
  return `${whole.format(ratio * 100)}${NB}%`;
}

/**
 * One thing over another.
 * @param ratio 0 or more
 * @returns '1.25'
 */
export function formatRatio(ratio: number): string {
  return hundredths.format(ratio);
}

/**
 * A force over a time.
 * @param newtonSeconds 0 or more
 * @returns '850 N s', or '10.7 kN s' from ten thousand on
 */
export function formatImpulse(newtonSeconds: number): string {
  return newtonSeconds < 10_000
    ? `${whole.format(newtonSeconds)}${NB}N${NB}s`
    : `${tenths.format(newtonSeconds / 1000)}${NB}kN${NB}s`;
}

const instantOfDay = (day: string): Date => new Date(`${day}T12:00:00Z`);

/**
 * A calendar day.
 * @param day ISO 8601
 * @param style `long` 'Wednesday 25 November', `short` 'Wed 25 Nov', `year` '25 November 2026'
 * @returns the day in words
 */
export function formatDay(day: string, style: 'long' | 'short' | 'year' = 'long'): string {
  return { long: dayLong, short: dayShort, year: dayYear }[style].format(instantOfDay(day));
}

/**
 * A day as seen from today.
 * @param day ISO 8601
 * @param today ISO 8601
 * @returns 'Today', 'Yesterday', or the day in words, with its year when it is another
 */
export function formatDayFrom(day: string, today: string): string {
  const days = Math.round((instantOfDay(today).getTime() - instantOfDay(day).getTime()) / 86_400_000);
  if (days === 0) return 'Today';
  if (days === 1) return 'Yesterday';
  return day.slice(0, 4) === today.slice(0, 4) ? formatDay(day) : `${formatDay(day)} ${day.slice(0, 4)}`;
}

/**
 * The time on the archer's clock, as it was stamped.
 * @param instant ISO 8601 with offset
 * @returns '07:05'
 */
export function formatTimeOfDay(instant: string): string {
  return /T(\d{2}:\d{2})/.exec(instant)?.[1] ?? '';
}
