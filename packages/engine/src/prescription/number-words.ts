import type { LessFacts } from './reason.ts';

const months = 'January February March April May June July August September October November December'.split(' ');

/**
 * A day as people say it.
 * @param day ISO 8601 day
 * @returns '21 November'
 */
export function dateWords(day: string): string {
  const at = day.lastIndexOf('-');
  return `${Number(day.slice(at + 1))} ${months[Number(day.slice(at - 2, at)) - 1]}`;
}

/**
 * A count with its noun.
 * @param count how many
 * @param noun the singular, whose last word takes the s
 * @returns '1 rep', '2 reps'
 */
export function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? '' : 's'}`;
}

/** What is prescribed: '2 sets of 10 reps, hold 30 s'. */
export function numbersWords(dose: { hold: number; reps: number; sets: number; addedWeight: number }): string {
  const weight = dose.addedWeight > 0 ? `, ${dose.addedWeight} lb added` : '';
  return `${counted(dose.sets, 'set')} of ${counted(dose.reps, 'rep')}, hold ${dose.hold} s${weight}`;
}

/**
 * What differs between two doses.
 * @param f each number, and what it was before
 * @returns 'hold 30 s to 35 s', several joined by commas; empty when nothing differs
 */
export function lessWords(f: Omit<LessFacts, 'title'>): string {
  let words = '';
  if (f.fromHold !== f.hold) words = `, hold ${f.fromHold} s to ${f.hold} s`;
  if (f.fromReps !== f.reps) words += `, reps ${f.fromReps} to ${f.reps}`;
  if (f.fromSets !== f.sets) words += `, sets ${f.fromSets} to ${f.sets}`;
  if (f.fromAddedWeight !== f.addedWeight) {
    words += `, added weight ${f.fromAddedWeight} lb to ${f.addedWeight} lb`;
  }
  return words.slice(2);
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
