import { presentWords, type Words } from '@larkhold/words';
import type { Routine } from './routine.ts';

/**
 * Routines that every rack has, gentle and without a bow.
 * @param words the language
 * @returns them, in the order of the page
 * @source common practice, no source; a coach or a physiotherapist knows what suits an archer
 */
export function builtInRoutines({ say }: Words = presentWords()): readonly Routine[] {
  return [
    {
      id: 'shoulder-mobility',
      title: say('routine.shouldersTitle'),
      kind: 'mobility',
      minutes: 8,
      lines: ([1, 2, 3, 4, 5] as const).map((line) => say(`routine.shoulders${line}`)),
    },
    {
      id: 'shoulder-strength',
      title: say('routine.bandTitle'),
      kind: 'strength',
      minutes: 20,
      lines: ([1, 2, 3, 4] as const).map((line) => say(`routine.band${line}`)),
    },
  ];
}
