import { checkCall } from './check-call.ts';

const COUNT_WORDS = [
  'one two three four five six seven eight nine ten',
  'eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty',
].flatMap((line) => line.split(' '));

/**
 * A small count in words, as it is said.
 * @param count a whole number, at least 1
 * @returns 'one' to 'twenty', digits above
 */
export function countWords(count: number): string {
  return COUNT_WORDS[count - 1] ?? String(count);
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
 * @returns 'Get ready', with the hand after it when given
 */
export function getReadyWords(hand?: 'usual' | 'opposite'): string {
  if (hand === undefined) return 'Get ready';
  return hand === 'opposite' ? 'Get ready. Opposite hand' : 'Get ready. Usual hand';
}
