import type { DayEntry, Prescription } from '@larkhold/engine';

/** Today's own word before drilling. */
export type Readiness = NonNullable<DayEntry['readiness']>;

/** The words, as they are offered. */
export const readinessChoices = ['fresh', 'as usual', 'heavy'] as const satisfies readonly Readiness[];

/**
 * What today's own word did to the numbers, and why.
 * @param readiness the word, if one was said
 * @param prescription today's numbers, made with it
 * @returns sentences; empty when nothing was said
 */
export function readinessWords(readiness: Readiness | undefined, { reasons }: Prescription): string {
  if (readiness === undefined) return '';
  if (readiness === 'as usual') return 'As usual: nothing changes.';
  if (readiness === 'fresh') {
    return 'Fresh: nothing changes. A good day adds nothing, because only clean sessions climb the ladder.';
  }
  const cuts = reasons.filter(({ rule }) => rule === 'heavy').map(({ change }) => change);
  if (cuts.length > 0) return cuts.join(' ');
  const eases = ['deload', 'taper', 'pain', 'effort', 'arrows'];
  const deeper = reasons.filter(({ rule }) => eases.includes(rule)).map(({ change }) => change);
  return ['Heavy: no more is taken off. Cuts are not added up, and a deeper one acts already.', ...deeper].join(' ');
}
