import type { SessionView } from '@larkhold/engine';
import { clockWords } from './clock-words.ts';

/**
 * Where in the drill it stands, in words.
 * @param view where it stands
 * @returns as "Set 2 of 3 · rep 4 of 10"
 */
export function placeWords({ progress }: Pick<SessionView, 'progress'>): string {
  return `Set ${progress.set + 1} of ${progress.sets} · rep ${progress.rep + 1} of ${progress.reps}`;
}

/**
 * How long the whole drill still takes.
 * @param view where it stands
 * @returns as "12:05 left", before it begins "12:05 in all"; empty when it is over
 */
export function timeLeftWords({ state, progress }: Pick<SessionView, 'state' | 'progress'>): string {
  if (state === 'done' || state === 'stopped') return '';
  return `${clockWords(progress.msLeft)} ${state === 'waiting' ? 'in all' : 'left'}`;
}
