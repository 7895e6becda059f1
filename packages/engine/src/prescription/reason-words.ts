import type { Lever } from '../program/program.ts';
import { dayOfNumber } from '../units/calendar-day.ts';
import type { LeverValues } from './ladder-path.ts';

const months = 'January February March April May June July August September October November December'.split(' ');

/**
 * A day as people say it.
 * @param day days from 1970-01-01
 * @returns '21 November'
 */
export function dayWords(day: number): string {
  const [, month, date] = dayOfNumber(day).split('-').map(Number);
  return `${date} ${months[(month ?? 1) - 1]}`;
}

/**
 * A count with its noun.
 * @param count how many
 * @param noun the singular
 * @returns '1 rep', '2 reps'
 */
export function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? '' : 's'}`;
}

/**
 * What differs between two places on a ladder.
 * @param from the place before
 * @param to the place now
 * @returns 'hold 30 s to 35 s', several joined by commas
 */
export function changeWords(from: LeverValues, to: LeverValues): string {
  const units: Record<Lever, string> = { hold: ' s', reps: '', sets: '', addedWeight: ' lb' };
  const names: Record<Lever, string> = { hold: 'hold', reps: 'reps', sets: 'sets', addedWeight: 'added weight' };
  return (Object.keys(units) as Lever[])
    .filter((lever) => from[lever] !== to[lever])
    .map((lever) => `${names[lever]} ${from[lever]}${units[lever]} to ${to[lever]}${units[lever]}`)
    .join(', ');
}

/**
 * A span as people say it.
 * @param spanMs milliseconds, at least 0
 * @returns '35 s', '15 min', '15 min 10 s'
 */
export function spanWords(spanMs: number): string {
  const seconds = Math.round(spanMs / 100) / 10;
  if (seconds < 60) return `${seconds} s`;
  const rest = Math.round((seconds % 60) * 10) / 10;
  return `${Math.floor(seconds / 60)} min${rest === 0 ? '' : ` ${rest} s`}`;
}
