import { DISAGREEMENT_MS, disagreementMs, type RepRecord, trueHeldMs } from '@larkhold/engine';
import type { Words } from './create-words.ts';
import { presentWords } from './present-words.ts';

/**
 * What a camera saw of a rep, in words. It is a measurement, not a diagnosis.
 * @param rep as logged
 * @param words the language
 * @returns sentences: how far clock and camera are apart where that is more than half a second, and what moved; none where it was not seen
 */
export function seenWords(
  rep: Pick<RepRecord, 'seen' | 'heldMs' | 'prescribedMs' | 'outcome'>,
  words: Words = presentWords(),
): string[] {
  const { seen, heldMs } = rep;
  if (seen === undefined) return [];
  const isApart = Math.abs(disagreementMs(rep)) > DISAGREEMENT_MS;
  const apart = isApart ? [words.say('sight.apart', { clock: heldMs, seen: trueHeldMs(rep) })] : [];
  const { moved, wholeMs } = seen;
  if (moved === undefined) return apart;
  if (moved.length === 0) return [...apart, words.say('sight.still')];
  const parts = moved.map((part) => words.say(`sight.moved.${part}`));
  return [...apart, ...parts, ...(wholeMs === undefined ? [] : [words.say('sight.wholeFor', { ms: wholeMs })])];
}
