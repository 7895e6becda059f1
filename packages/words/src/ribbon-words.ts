import type { Outcome } from '@larkhold/engine';
import type { Words } from './create-words.ts';
import type { MessageKey } from './message-key.ts';
import { presentWords } from './present-words.ts';

/** A rep as a ribbon shows it; see `lark-hold-ribbon`. */
interface ShownRep {
  prescribedMs: number;
  heldMs: number;
  outcome: Outcome | 'coming' | 'now';
  why?: 'form' | 'tired' | 'interrupted';
}

/** More doubtful reps than these are only counted. */
const MOST_TOLD = 8;

/**
 * How a rep ended, as a button says it.
 * @param outcome as logged
 * @param words the language
 * @returns 'Held'
 */
export function outcomeName(outcome: Outcome, words: Words = presentWords()): string {
  return words.say(`ribbon.${outcome}`);
}

/**
 * Why a rep was let down early, as a button says it.
 * @param why as logged
 * @param words the language
 * @returns 'Tired'
 */
export function shortReasonName(why: NonNullable<ShownRep['why']>, words: Words = presentWords()): string {
  return words.say(`ribbon.${why}`);
}

/**
 * One rep of a ribbon.
 * @param shown as it is shown
 * @param index its place, 0-based
 * @param words the language
 * @returns 'Rep 7: 12 s of 30 s, tired'
 */
export function ribbonRepWords(
  { outcome, heldMs: held, prescribedMs: asked, why }: ShownRep,
  index: number,
  words: Words = presentWords(),
): string {
  const rep = index + 1;
  if (outcome === 'coming') return words.say('ribbon.repComing', { rep, asked });
  if (outcome === 'now') return words.say('ribbon.repNow', { rep, asked });
  if (outcome === 'held') return words.say('ribbon.repHeld', { rep, held });
  if (outcome === 'skipped') return words.say('ribbon.repSkipped', { rep });
  if (outcome === 'unsure') return words.say('ribbon.repUnsure', { rep });
  return why
    ? words.say('ribbon.repShortWhy', { rep, held, asked, why })
    : words.say('ribbon.repShort', { rep, held, asked });
}

const kinds = [
  ['held', 'ribbon.countHeld'],
  ['short', 'ribbon.countShort'],
  ['skipped', 'ribbon.countSkipped'],
  ['unsure', 'ribbon.countUnsure'],
  ['now', 'ribbon.countNow'],
  ['coming', 'ribbon.countComing'],
] as const satisfies readonly (readonly [ShownRep['outcome'], MessageKey])[];

/**
 * What a ribbon shows, for those who do not see it.
 * @param reps in the order of the drill
 * @param words the language
 * @returns '20 reps: 18 held, 1 short, 1 skipped. Rep 7: 12 s of 30 s, tired. Rep 9: skipped.'
 */
export function ribbonWords(reps: readonly ShownRep[], words: Words = presentWords()): string {
  const counted = kinds.flatMap(([kind, key]) => {
    const n = reps.filter(({ outcome }) => outcome === kind).length;
    return n > 0 ? [words.say(key, { n })] : [];
  });
  const odd = reps.flatMap((rep, index) =>
    rep.outcome === 'short' || rep.outcome === 'skipped' || rep.outcome === 'unsure'
      ? [ribbonRepWords(rep, index, words)]
      : [],
  );
  return [
    words.say('ribbon.all', { reps: reps.length, kinds: words.row(counted) }),
    ...odd.slice(0, MOST_TOLD).map((rep) => words.say('ribbon.told', { rep })),
    ...(odd.length > MOST_TOLD ? [words.say('ribbon.more', { n: odd.length - MOST_TOLD })] : []),
  ].join(' ');
}
