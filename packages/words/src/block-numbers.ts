import { type AskedNumber, explain, type PrescribedBlock, type Prescription } from '@larkhold/engine';
import { formatCounted, formatMinutes, formatSeconds, formatWeight } from './format-for-people.ts';
import type { Units } from './formats.ts';

/** Between sets, reps and hold; they stay on one line. */
const TIMES = '\u00a0×\u00a0';

/** A number of a prescription as a piece of a line of text. */
export interface NumberPiece {
  number: AskedNumber;
  /** Its block in the program, 0-based; absent for the whole drill. */
  block?: number;
  /** What is shown: '30 s'. */
  text: string;
  /** What it is, when the text alone does not say: 'hold'. */
  name: string;
}

/** A piece of a line: a number that can be asked about, or words between. */
export type Piece = NumberPiece | string;

/**
 * Sets, reps and hold as archers write them, each a number that can be asked about.
 * @param block today's numbers
 * @returns pieces that read '2 × 10 × 30 s'
 */
export function doseLine({ block, sets, reps, holdMs }: PrescribedBlock): Piece[] {
  const piece = (number: AskedNumber, text: string, name: string): NumberPiece => ({ number, block, text, name });
  const hold = piece('hold', formatSeconds(holdMs), 'hold');
  const many = [piece('reps', `${reps}`, formatCounted(reps, 'rep')), TIMES, hold];
  return sets > 1 ? [piece('sets', `${sets}`, formatCounted(sets, 'set')), TIMES, ...many] : many;
}

/**
 * Rests, added weight and hand, each number askable.
 * @param block today's numbers
 * @param units the archer's
 * @returns pieces that read 'rest 60 s, 120 s between sets'
 */
export function restLine(block: PrescribedBlock, units: Units): Piece[] {
  const { sets, reps, restMs, setRestMs, letDownTo, addedWeightLbf, hand } = block;
  const piece = (number: AskedNumber, text: string, name: string): NumberPiece => {
    return { number, block: block.block, text, name };
  };
  const parts: Piece[][] = [];
  if (reps > 1 && restMs > 0) parts.push(['rest ', piece('rest', formatSeconds(restMs), 'rest')]);
  if (reps > 1 && restMs === 0) {
    parts.push([
      piece('rest', letDownTo === 'set-up' ? 'let down to set-up, no rest' : 'no rest between reps', 'rest'),
    ]);
  }
  if (sets > 1) parts.push([piece('setRest', formatSeconds(setRestMs), 'rest after a set'), ' between sets']);
  if (parts.length === 0) parts.push(['one rep']);
  if (addedWeightLbf > 0) {
    parts.push([piece('addedWeight', formatWeight(addedWeightLbf, units), 'added weight'), ' added']);
  }
  if (hand !== 'usual') parts.push([hand === 'both' ? 'both hands in turn' : 'other hand']);
  return parts.flatMap((part, index) => (index === 0 ? part : [', ', ...part]));
}

/**
 * How long the whole drill is, askable.
 * @param prescription today's
 * @returns pieces that read '12 min in all.'
 */
export function lengthLine({ durationMs }: Prescription): Piece[] {
  return [{ number: 'duration', text: formatMinutes(durationMs), name: 'length' }, ' in all.'];
}

/**
 * The accessible name of the button on a number.
 * @param piece the number
 * @returns 'Why 30 s?', 'Why 10 reps?'
 */
export function whyName({ text, name, number }: NumberPiece): string {
  const words = number === 'reps' || number === 'sets' ? name : text;
  return `Why ${words.replaceAll('\u00a0', ' ')}?`;
}

/**
 * Why a number is what it is.
 * @param prescription today's
 * @param piece the number
 * @returns plain sentences, one string each
 */
export function whySentences(prescription: Prescription, { block, number }: NumberPiece): string[] {
  // A full stop inside a number or a name is not followed by a space and a capital or a digit.
  return explain(prescription, block ?? 0, number).split(/(?<=[.!?]) (?=[A-Z0-9])/);
}
