import type { CallFault } from '@larkhold/engine';
import type { Words } from './create-words.ts';
import { presentWords } from './present-words.ts';

/**
 * Why a line is never said at full draw.
 * @param fault what `checkCall` found
 * @param words the language
 * @returns one sentence, 'Not said: “let go” can be heard as an order to let the string go.'
 */
export function callFaultWords(fault: CallFault, words: Words = presentWords()): string {
  return fault.kind === 'unseen' ? words.say('calls.unseen') : words.say(`calls.${fault.kind}`, { found: fault.found });
}
