import type { Problem } from '@larkhold/engine';

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
 * @returns each message once: at the field it points to, else at the nearest field around it, else elsewhere
 */
export function placeProblems(problems: readonly Problem[], fields: readonly string[]): PlacedProblems {
  const known = new Set(fields);
  const byField = new Map<string, string[]>();
  const elsewhere: string[] = [];
  for (const problem of problems) {
    const field = nearestField(pointerOfMissing(problem), known);
    const message = wordsForPeople(problem.message);
    if (field === undefined) elsewhere.push(message);
    else byField.set(field, [...(byField.get(field) ?? []), message]);
  }
  return { byField, elsewhere };
}

/** A key that is missing is reported at the object that lacks it when a rule asks for it; its own field is the place to put it right. */
function pointerOfMissing({ pointer, message }: Problem): string {
  const key = /^The key "(\w+)" is missing/.exec(message)?.[1];
  return key === undefined || pointer.endsWith(`/${key}`) ? pointer : `${pointer}/${key}`;
}

function nearestField(pointer: string, known: ReadonlySet<string>): string | undefined {
  for (let at = pointer; at !== ''; at = at.slice(0, at.lastIndexOf('/'))) if (known.has(at)) return at;
  return undefined;
}

/** On a page there are fields, not keys, and nobody sees quotes or brackets. */
function wordsForPeople(message: string): string {
  return message
    .replace(/^The key "\w+" is missing[.:] ?/, 'Needed here. ')
    .replace(/ Found "(.*)"\.$/, ' Found “$1”.')
    .replace('Expected a text in quotes.', 'Expected words.')
    .replace('Needed here. it is needed', 'Needed');
}
