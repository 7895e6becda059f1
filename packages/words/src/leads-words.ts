import type { LadderFacts, Prescription, Reason, Rule } from '@larkhold/engine';
import type { Words } from './create-words.ts';
import { presentWords } from './present-words.ts';
import { nextStep, reasonWords } from './reason-words.ts';

/** Rules that make today less than the place on the ladder. */
const eases: readonly Rule[] = [
  ...(['away', 'wayBack', 'elsewhere', 'deload', 'lighterWeek', 'taper', 'effort', 'heavy', 'arrows', 'cap'] as const),
  ...(['ageDose', 'restLess'] as const),
];

/**
 * What today counts for, and what would lead on, one sentence a block.
 * @param prescription today's
 * @param words the language
 * @returns plain sentences; none on a rest day and for a test
 * @example leadsWords(prescription) // ['Holds: clean, it counts in full. One more clean day leads on: hold 30 s to 32 s.']
 */
export function leadsWords({ reasons, rest, kind }: Prescription, words: Words = presentWords()): string[] {
  if (rest !== undefined || kind === 'test') return [];
  const isPlace = reasons.some(
    (one) => (one.rule === 'minutes' || one.rule === 'halfHour') && one.facts.counts === 'place',
  );
  const isEased = reasons.some(({ rule }) => eases.includes(rule));
  return reasons.flatMap((reason) => {
    const facts = ladderOf(reason);
    if (!facts) return [];
    const { title } = facts;
    if (reason.rule === 'fixed') return [words.say('leads.fixed', { title })];
    if (isPlace || reasons.some(({ rule, block }) => rule === 'holdsPlace' && block === reason.block))
      return [words.say('leads.place', { title })];
    return [words.say(isEased ? 'leads.next' : 'leads.clean', { title, next: nextStep(facts, words) })];
  });
}

/**
 * A reason without what leads on, for a page that says that in a place of its own.
 * @param reason its rule and facts
 * @param words the language
 * @returns one or more plain sentences
 */
export function reasonWithoutNext(reason: Reason, words: Words = presentWords()): string {
  if (!ladderOf(reason)) return reasonWords(reason, words);
  const silent: Words = {
    ...words,
    say: (key, ...given) => (key.startsWith('reason.next') ? '' : words.say(key, ...given)),
  };
  return reasonWords(reason, silent).trim();
}

function ladderOf({ facts }: Reason): LadderFacts | undefined {
  return 'workHold' in facts ? facts : undefined;
}
