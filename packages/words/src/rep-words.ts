import { type DrillRecord, heldOf, type RepRecord, trueHeldMs } from '@larkhold/engine';
import type { Words } from './create-words.ts';
import { presentWords } from './present-words.ts';

/**
 * How a rep that did not go as planned was logged, in words.
 * @param rep as logged
 * @param words the language
 * @returns 'Let down 2 s early: logged as 28 s.'; undefined for a rep that was held
 */
export function repWords(
  { outcome, prescribedMs, heldMs }: RepRecord,
  words: Words = presentWords(),
): string | undefined {
  if (outcome === 'short') return words.say('rep.early', { early: Math.max(0, prescribedMs - heldMs), held: heldMs });
  if (outcome === 'skipped') return words.say('rep.skipped');
  return outcome === 'unsure' ? words.say('rep.unsure') : undefined;
}

/**
 * A whole drill in a sentence or two.
 * @param record what was logged
 * @param words the language
 * @returns '4 of 5 reps held. 118 s at full draw.'
 */
export function drillWords({ reps, prescribedReps }: DrillRecord, words: Words = presentWords()): string {
  const { heldMs: ms, fullCount: held } = heldOf(reps);
  const isSeen = reps.some((rep) => trueHeldMs(rep) !== rep.heldMs);
  return words.say(isSeen ? 'rep.drillSeen' : 'rep.drill', {
    held,
    reps: Math.max(prescribedReps ?? 0, reps.length),
    ms,
  });
}

/**
 * Where a rep was, counted as people count.
 * @param logged the rep
 * @param record the drill it belongs to: what there is only one of is left out
 * @param words the language
 * @returns 'Rep 3', 'Set 2, rep 3', 'Block 1, set 2, rep 3'
 */
export function placeOfRep(logged: RepRecord, { reps }: DrillRecord, words: Words = presentWords()): string {
  const manyBlocks = new Set(reps.map(({ block }) => block)).size > 1;
  const manySets = reps.some(({ set }) => set > 0);
  const [block, set, rep] = [logged.block + 1, logged.set + 1, logged.rep + 1];
  const ofBlock = () =>
    manySets ? words.say('rep.placeInBlockAndSet', { block, set, rep }) : words.say('rep.placeInBlock', { block, rep });
  const ofSet = () => (manySets ? words.say('rep.placeInSet', { set, rep }) : words.say('rep.place', { rep }));
  const place = manyBlocks ? ofBlock() : ofSet();
  return logged.hand === 'opposite' ? words.say('rep.otherHand', { place }) : place;
}
