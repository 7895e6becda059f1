import type { AskedNumber, PrescribedBlock, Prescription } from '@larkhold/engine';
import type { Words } from './create-words.ts';
import type { Units } from './formats.ts';
import { presentWords } from './present-words.ts';
import { whyWords } from './why-words.ts';

/** Between sets, reps and hold; they stay on one line. */
const TIMES = '\u00a0×\u00a0';

/** A number of a prescription as a piece of a line of text. */
export interface NumberPiece {
  number: AskedNumber;
  /** Its block in the program, 0-based; absent for the whole drill. */
  block?: number;
  /** What is shown: '30 s'. */
  text: string;
  /** What the button on it is called: 'Why 10 reps?'. */
  why: string;
}

/** A piece of a line: a number that can be asked about, or words between. */
export type Piece = NumberPiece | string;

/**
 * Sets, reps and hold as archers write them, each a number that can be asked about.
 * @param block today's numbers
 * @param words the language
 * @returns pieces that read '2 × 10 × 30 s'
 */
export function doseLine({ block, sets, reps, holdMs }: PrescribedBlock, words: Words = presentWords()): Piece[] {
  const piece = (number: AskedNumber, text: string, name = text): NumberPiece => ({
    ...{ number, block, text, why: whyName(name, words) },
  });
  const line: Piece[] = [
    piece('reps', words.count(reps), words.say('dose.reps', { n: reps })),
    TIMES,
    piece('hold', words.seconds(holdMs)),
  ];
  return sets > 1 ? [piece('sets', words.count(sets), words.say('dose.sets', { n: sets })), TIMES, ...line] : line;
}

/**
 * Rests, added weight and hand, each number askable.
 * @param block today's numbers
 * @param units the archer's
 * @param words the language
 * @returns pieces that read 'rest 60 s, 120 s between sets'
 */
export function restLine(block: PrescribedBlock, units: Units, words: Words = presentWords()): Piece[] {
  const { sets, reps, restMs, setRestMs, letDownTo, addedWeightLbf, hand } = block;
  const piece = (number: AskedNumber, text: string): NumberPiece => {
    return { number, block: block.block, text, why: whyName(text, words) };
  };
  const parts: Piece[][] = [];
  if (reps > 1 && restMs > 0) parts.push(words.pieces('dose.rest', { rest: piece('rest', words.seconds(restMs)) }));
  if (reps > 1 && restMs === 0) {
    parts.push([piece('rest', words.say(letDownTo === 'set-up' ? 'dose.setUp' : 'dose.noRest'))]);
  }
  if (sets > 1) parts.push(words.pieces('dose.setRest', { rest: piece('setRest', words.seconds(setRestMs)) }));
  if (parts.length === 0) parts.push([words.say('dose.oneRep')]);
  if (addedWeightLbf > 0) {
    const weight = piece('addedWeight', words.weight(addedWeightLbf, units));
    parts.push(words.pieces('dose.added', { weight }));
  }
  if (hand !== 'usual') parts.push([words.say(`dose.${hand}`)]);
  return parts.flatMap((part, index) => (index === 0 ? part : [', ', ...part]));
}

/**
 * How long the whole drill is, askable.
 * @param prescription today's
 * @param words the language
 * @returns pieces that read '12 min in all.'
 */
export function lengthLine({ durationMs }: Prescription, words: Words = presentWords()): Piece[] {
  const text = words.minutes(durationMs);
  return words.pieces<'dose.length', NumberPiece>('dose.length', {
    length: { number: 'duration', text, why: whyName(text, words) },
  });
}

/**
 * Why a number is what it is.
 * @param prescription today's
 * @param piece the number
 * @param words the language
 * @returns plain sentences, one string for each reason
 */
export function whySentences(
  prescription: Prescription,
  { block, number }: NumberPiece,
  words: Words = presentWords(),
): string[] {
  return whyWords(prescription, block ?? 0, number, words);
}

function whyName(number: string, words: Words): string {
  return words.say('dose.why', { number: number.replaceAll('\u00a0', ' ') });
}
