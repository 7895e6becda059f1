import type { DayStyle, Units } from './formats.ts';
import { presentWords } from './present-words.ts';

/**
 * A count.
 * @param value a whole number
 * @returns '1,250' in the present language
 */
export function formatCount(value: number): string {
  return presentWords().count(value);
}

/**
 * A stretch of time in seconds, to the tenth.
 * @param ms milliseconds
 * @returns '30 s', '7.5 s' in the present language
 */
export function formatSeconds(ms: number): string {
  return presentWords().seconds(ms);
}

/**
 * How long something takes.
 * @param ms milliseconds
 * @returns '45 s', '2 min 5 s' under ten minutes, '28 min', '1 h 5 min'
 */
export function formatDuration(ms: number): string {
  return presentWords().duration(ms);
}

/**
 * Sets, reps and hold as archers write them.
 * @param block the numbers; the hold in milliseconds
 * @returns '5 × 5 s', '2 × 10 × 30 s'
 */
export function formatReps(block: { sets: number; reps: number; holdMs: number }): string {
  return presentWords().reps(block);
}

/**
 * A draw weight in the trade's unit, with what it is in metric where that is wanted.
 * @param lbf pounds-force
 * @param units the archer's
 * @returns '38 lb', or '38 lb (17.2 kg, 169 N)'
 */
export function formatWeight(lbf: number, units: Units): string {
  return presentWords().weight(lbf, units);
}

/**
 * A draw length.
 * @param inches as bows are sold
 * @param units the archer's
 * @returns '28.5 in', or '72.4 cm'
 */
export function formatLength(inches: number, units: Units): string {
  return presentWords().drawLength(inches, units);
}

/**
 * A distance in a room or on a field.
 * @param metres how far
 * @param units the archer's
 * @returns '2 m', or '6.6 ft'
 */
export function formatDistance(metres: number, units: Units): string {
  return presentWords().distance(metres, units);
}

/**
 * A part of a whole.
 * @param ratio 0 to 1
 * @returns '70 %'
 */
export function formatShare(ratio: number): string {
  return presentWords().share(ratio);
}

/**
 * A force over a time.
 * @param newtonSeconds 0 or more
 * @returns '850 N s', or '10.7 kN s' from ten thousand on
 */
export function formatImpulse(newtonSeconds: number): string {
  return presentWords().impulse(newtonSeconds);
}

/**
 * A calendar day in the present language.
 * @param day ISO 8601
 * @param style `long` 'Wednesday 25 November', `short` 'Wed 25 Nov', `year` '25 November 2026', `plain` '25 November'
 * @returns the day in words
 */
export function formatDay(day: string, style: DayStyle = 'long'): string {
  return presentWords().day(day, style);
}

/**
 * A month in the present language.
 * @param month 'yyyy-mm'
 * @param style `long` 'November 2026', `first` the first letter of its name, where a screen reader hears the long one
 * @returns the month in words
 */
export function formatMonth(month: string, style: 'long' | 'first' = 'long'): string {
  const at = new Date(`${month}-15T00:00:00Z`);
  const look = style === 'long' ? ({ month: 'long', year: 'numeric' } as const) : ({ month: 'narrow' } as const);
  return new Intl.DateTimeFormat(presentWords().locale, { ...look, timeZone: 'UTC' }).format(at);
}

/**
 * A day as seen from today.
 * @param day ISO 8601
 * @param today ISO 8601
 * @returns 'Today', 'Yesterday', or the day in words, with its year when it is another
 */
export function formatDayFrom(day: string, today: string): string {
  const days = Math.round((Date.parse(`${today}T12:00:00Z`) - Date.parse(`${day}T12:00:00Z`)) / 86_400_000);
  if (days === 0) return presentWords().say('day.today');
  if (days === 1) return presentWords().say('day.yesterday');
  return day.slice(0, 4) === today.slice(0, 4) ? formatDay(day) : formatDay(day, 'longYear');
}

/**
 * The time on the archer's clock, as it was stamped.
 * @param instant ISO 8601 with offset
 * @returns '07:05'
 */
export function formatTimeOfDay(instant: string): string {
  return presentWords().timeOfDay(instant);
}

/**
 * Several things in a row, beside a label or in a table.
 * @param things names or short sentences
 * @returns 'a, b, c' in the present language
 */
export function formatRow(things: readonly string[]): string {
  return presentWords().row(things);
}
