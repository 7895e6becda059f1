import type { SessionView } from '@larkhold/engine';
import { clockWords } from './clock-words.ts';
import type { Words } from './create-words.ts';
import { presentWords } from './present-words.ts';

/**
 * Where in the drill the archer is; in a rest, the rep to come.
 * @param view where it is
 * @param words the language
 * @returns as 'Set 2 of 3 · rep 4 of 10'
 */
export function placeWords(
  { progress, step, next }: Pick<SessionView, 'progress' | 'step' | 'next'>,
  words: Words = presentWords(),
): string {
  const isRest = step?.kind === 'rest' || step?.kind === 'setRest';
  const { set, rep } = isRest && next?.block === step.block ? next : progress;
  const { sets, reps } = progress;
  return words.say('phase.place', { set: set + 1, sets, rep: rep + 1, reps });
}

/**
 * How long the whole drill still takes.
 * @param view where it is
 * @param words the language
 * @returns as '12:05 left', before it begins '12:05 in all'; empty when it is over
 */
export function timeLeftWords(
  { state, progress }: Pick<SessionView, 'state' | 'progress'>,
  words: Words = presentWords(),
): string {
  if (state === 'done' || state === 'stopped') return '';
  return words.say(state === 'waiting' ? 'phase.inAll' : 'phase.left', { clock: clockWords(progress.msLeft) });
}
