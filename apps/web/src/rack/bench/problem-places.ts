import type { Problem } from '@larkhold/engine';
import { presentWords, problemWords, type Words } from '@larkhold/words';

/** Where on the bench each problem is shown. */
export interface PlacedProblems {
  /** Messages by the pointer of the field they belong to. */
  byField: ReadonlyMap<string, readonly string[]>;
  /** Those that belong to no field, for the top of the page. */
  elsewhere: readonly string[];
}

/**
 * Puts each problem of a file beside a field.
 * @param problems as the parser reports them
 * @param fields pointers of the fields that are on the page
 * @param words the language
 * @returns each message once: at the field it points to, else at the nearest field around it, else elsewhere
 */
export function placeProblems(
  problems: readonly Problem[],
  fields: readonly string[],
  words: Words = presentWords(),
): PlacedProblems {
  const known = new Set(fields);
  const byField = new Map<string, string[]>();
  const elsewhere: string[] = [];
  for (const problem of problems) {
    const field = nearestField(pointerOfMissing(problem), known);
    const message = wordsForPeople(problem, words);
    if (field === undefined) elsewhere.push(message);
    else byField.set(field, [...(byField.get(field) ?? []), message]);
  }
  return { byField, elsewhere };
}

/** Rules that ask for a key, and the key. */
const missingBy: Partial<Record<Problem['fault']['rule'], string>> = {
  setRestMissing: 'setRest',
  measureMissing: 'measure',
};

/** A key that is missing is reported at the object that lacks it when a rule asks for it; its own field is the place to put it right. */
function pointerOfMissing({ pointer, missing, fault }: Problem): string {
  const key = missing ?? missingBy[fault.rule];
  return key === undefined || pointer.endsWith(`/${key}`) ? pointer : `${pointer}/${key}`;
}

function nearestField(pointer: string, known: ReadonlySet<string>): string | undefined {
  for (let at = pointer; at !== ''; at = at.slice(0, at.lastIndexOf('/'))) if (known.has(at)) return at;
  return undefined;
}

/** On a page there are fields, not keys, and nobody sees quotes or brackets. */
function wordsForPeople({ fault, missing, found }: Problem, words: Words): string {
  const isText = fault.rule === 'type' && fault.type === 'string';
  const text = found?.kind === 'text' ? /^"(.*)"$/.exec(found.found)?.[1] : undefined;
  const rest = text === undefined ? found : undefined;
  if (fault.rule === 'setRestMissing') return words.say('bench.neededRest', { why: fault.why });
  return [
    ...(missing === undefined ? [] : [words.say('bench.needed')]),
    isText ? words.say('bench.expectedWords') : problemWords({ fault, ...(rest && { found: rest }) }, words),
    ...(text === undefined ? [] : [words.say('bench.foundWords', { found: text })]),
  ].join(' ');
}
