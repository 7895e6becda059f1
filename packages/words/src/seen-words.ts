import { DISAGREEMENT_MS, disagreementMs, type RepRecord, type SeenForm, trueHeldMs } from '@larkhold/engine';
import type { Words } from './create-words.ts';
import { presentWords } from './present-words.ts';

/** The one soft word for what moved, as the spoken words have it: in English, as cues bring them. */
export const movedCall = { elbow: 'Elbow', bowShoulder: 'Bow shoulder', creep: 'Draw hand' } as const;

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
  const { moved, wholeMs = 0 } = seen;
  return moved === undefined ? apart : [...apart, ...formWords({ moved, wholeMs }, words)];
}

/**
 * What moved in a hold since the anchor, in words.
 * @param form parts, and for how long nothing had moved, milliseconds
 * @param words the language
 * @returns sentences
 */
export function formWords({ moved, wholeMs }: SeenForm, words: Words = presentWords()): string[] {
  if (moved.length === 0) return [words.say('sight.still')];
  return [...moved.map((part) => words.say(`sight.moved.${part}`)), words.say('sight.wholeFor', { ms: wholeMs })];
}
