import type { DrillRecord, RepRecord } from '@larkhold/engine';
import type { Words } from './create-words.ts';
import { formatCounted, formatDuration } from './format-for-people.ts';
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
 * @returns '4 of 5 reps held. 118 s at full draw.'
 */
export function drillWords({ reps, prescribedReps }: DrillRecord): string {
  const held = reps.filter(({ outcome }) => outcome === 'held').length;
  const heldMs = reps.reduce((sum, rep) => sum + rep.heldMs, 0);
  const total = Math.max(prescribedReps ?? 0, reps.length);
  return `${held} of ${formatCounted(total, 'rep')} held. ${formatDuration(heldMs)} at full draw.`;
}

/**
 * Where a rep stands, counted as people count.
 * @param rep as logged
 * @param record the drill it belongs to: what there is only one of is left out
 * @returns 'Rep 3', 'Set 2, rep 3', 'Block 1, set 2, rep 3'
 */
export function placeOfRep(rep: RepRecord, { reps }: DrillRecord): string {
  const blocks = new Set(reps.map(({ block }) => block)).size;
  const sets = reps.some(({ set }) => set > 0);
  const parts = [
    ...(blocks > 1 ? [`block ${rep.block + 1}`] : []),
    ...(sets ? [`set ${rep.set + 1}`] : []),
    `rep ${rep.rep + 1}`,
  ].join(', ');
  return `${parts.charAt(0).toUpperCase()}${parts.slice(1)}${rep.hand === 'opposite' ? ', other hand' : ''}`;
}
