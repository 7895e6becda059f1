import { checkCall } from './check-call.ts';

const COUNT_WORDS = [
  'one two three four five six seven eight nine ten',
  'eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty',
].flatMap((line) => line.split(' '));
/** The same as first words. Made once: nearly every rep and rest says one. */
const FIRST_COUNT_WORDS = COUNT_WORDS.map((words) => `${words.charAt(0).toUpperCase()}${words.slice(1)}`);
/** Whole tens above twenty, which only times have. */
const FIRST_TENS: Readonly<Record<number, string>> = { 30: 'Thirty', 40: 'Forty', 50: 'Fifty' };

/**
 * A count in words, as it is said.
 * @param count a whole number, at least 1
 * @returns 'one' to 'twenty', and digits above, which no pack of phrases has: what is said then is the plain phrase of the cue
 */
export function countWords(count: number): string {
  return COUNT_WORDS[count - 1] ?? String(count);
}

/**
 * A time in words, as it is said.
 * @param seconds whole seconds, more than 1
 * @returns 'Thirty seconds', 'One minute'; minutes where they are whole
 */
export function secondsWords(seconds: number): string {
  const isMinutes = seconds >= 60 && seconds % 60 === 0;
  const number = isMinutes ? seconds / 60 : seconds;
  const count = FIRST_TENS[number] ?? firstCountWords(number);
  const unit = !isMinutes ? 'seconds' : seconds === 60 ? 'minute' : 'minutes';
  return `${count} ${unit}`;
}

function firstCountWords(count: number): string {
  return FIRST_COUNT_WORDS[count - 1] ?? String(count);
}

/** Which rep comes: 0-based in its set, how many the set has, and whether it is the drill's last. */
export interface ComingRep {
  rep: number;
  reps: number;
  isLast: boolean;
}

/**
 * Which rep comes, as it is said before its draw.
 * @param coming the rep
 * @returns 'Seven of ten'; 'Last one' for the last of the drill; nothing for the only rep of a set
 */
export function repWords({ rep, reps, isLast }: ComingRep): string {
  if (isLast && (rep > 0 || reps === 1)) return 'Last one';
  if (reps === 1) return '';
  return `${firstCountWords(rep + 1)} of ${countWords(reps)}`;
}

/**
 * What is said when a set rest begins and the block goes on.
 * @param set the next set, 0-based
 * @param sets how many sets the block has
 * @returns for example 'Rest. Set two of three next'
 */
export function nextSetWords(set: number, sets: number): string {
  return `Rest. Set ${countWords(set + 1)} of ${countWords(sets)} next`;
}

/**
 * What is said when a rest begins and another block follows.
 * @param title the next block's title
 * @returns for example 'Rest. Next: Full-draw holds'; without the title where it may not be said
 */
export function nextBlockWords(title: string): string {
  return checkCall(title) === undefined ? `Rest. Next: ${title}` : 'Rest. Next drill';
}

/**
 * What is said shortly before a draw.
 * @param hand the draw's hand where it must be said, else undefined
 * @param coming which rep it is, where that is said
 * @returns 'Get ready', with the hand and the rep after it when given
 */
export function getReadyWords(hand?: 'usual' | 'opposite', coming?: ComingRep): string {
  const handWords = hand === undefined ? '' : hand === 'opposite' ? '. Opposite hand' : '. Usual hand';
  const words = coming === undefined ? '' : repWords(coming);
  return `Get ready${handWords}${words === '' ? '' : `. ${words}`}`;
}

/**
 * What is said when a rest between two reps begins that is too short for a call before the draw.
 * @param coming which rep comes, where that is said
 * @returns 'Rest', or 'Rest. Seven of ten next'
 */
export function shortRestWords(coming?: ComingRep): string {
  const words = coming === undefined ? '' : repWords(coming);
  return words === '' ? 'Rest' : words === 'Last one' ? 'Rest. Last one next' : `Rest. ${words} next`;
}
