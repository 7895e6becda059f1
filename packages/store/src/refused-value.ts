import { complaintOf } from '@larkhold/engine';
import { problemWords, say } from '@larkhold/words';
import type * as z from 'zod';

/** What the archer calls what a table or key holds: the word that the message tells apart. */
const thingWords = {
  opened: 'program',
  drills: 'drill',
  days: 'day',
  weeks: 'week',
  notes: 'note',
  milestones: 'milestone',
  kit: 'kit',
  running: 'running',
  majorGoal: 'goal',
  season: 'season',
  ownKit: 'kit',
  unknownParts: 'other',
} as const;
/** A table of rows, or a single value's key. */
export type StoredThing = keyof typeof thingWords;

/** A value that the store does not take. Nothing has changed, and nothing of it is kept: whoever asked still has it. */
export class RefusedValueError extends TypeError {
  /** What should have been stored. */
  readonly thing: StoredThing;
  /** Where in it the trouble is, outermost first. */
  readonly path: readonly PropertyKey[];

  /**
   * @param thing what should have been stored
   * @param error what its schema says
   * @param value the value as it was given
   */
  constructor(thing: StoredThing, error: z.ZodError, value: unknown) {
    const [issue] = error.issues;
    const path = issue?.path ?? [];
    const what = { thing: thingWords[thing], reason: reasonOf(issue, valueAt(value, path)) };
    super(
      path.length === 0
        ? say('trouble.notKept', what)
        : say('trouble.notKeptAt', { ...what, where: path.map(String).join('/') }),
    );
    this.name = 'RefusedValueError';
    this.thing = thing;
    this.path = path;
  }
}

/**
 * Why a value does not fit.
 * @param issue what its schema says
 * @param found the value at the issue's place
 * @returns one sentence
 */
export function reasonOf(issue: z.core.$ZodIssue | undefined, found: unknown): string {
  if (issue?.code === 'too_big' && typeof found === 'string')
    return say('trouble.tooLong', { length: found.length, most: Number(issue.maximum) });
  const { fault } = issue ? complaintOf(issue, found) : { fault: { rule: 'unfit' } as const };
  return problemWords({ fault });
}

/**
 * What is at a place.
 * @param value where to look
 * @param path keys, outermost first
 * @returns the value; undefined where there is none
 */
export function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (at, key) => (typeof at === 'object' && at !== null ? Reflect.get(at, key) : undefined),
    value,
  );
}
