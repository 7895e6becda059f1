import type * as z from 'zod';

/** What the archer calls what a table or key holds. */
const thingWords = {
  opened: 'program',
  drills: 'drill',
  days: 'day in the diary',
  weeks: 'week page',
  notes: 'scrap of the notes wall',
  milestones: 'milestone',
  kit: 'kit',
  running: 'drill under way',
  majorGoal: 'major goal',
  season: 'season',
  ownKit: 'part of the kit',
  unknownParts: 'part of a newer app',
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
    const where = path.length === 0 ? '' : ` (${path.map(String).join('/')})`;
    super(
      `This ${thingWords[thing]} was not kept${where}: ${reasonOf(issue, valueAt(value, path))} Change it and try again.`,
    );
    this.name = 'RefusedValueError';
    this.thing = thing;
    this.path = path;
  }
}

function reasonOf(issue: z.core.$ZodIssue | undefined, found: unknown): string {
  if (issue?.code === 'too_big' && typeof found === 'string') {
    return `it has ${found.length} characters, and at most ${String(issue.maximum)} fit.`;
  }
  if (issue === undefined) return 'it can not be read.';
  return issue.message.endsWith('.') ? issue.message : `${issue.message}.`;
}

function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (at, key) => (typeof at === 'object' && at !== null ? Reflect.get(at, key) : undefined),
    value,
  );
}
