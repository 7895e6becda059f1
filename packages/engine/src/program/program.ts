import * as z from 'zod';
import '../units/plain-parsers.ts';

const number = (least: number, most: number, what: string) => z.number().min(least).max(most).describe(what);
const count = (least: number, most: number, what: string) => z.int().min(least).max(most).describe(what);
const text = (most: number, what: string) => z.string().max(most).describe(what);

/** How each lever is valued: the range of the block's own key, and whether it counts whole things. */
export const leverRanges = {
  hold: { least: 0.5, most: 180, whole: false },
  reps: { least: 1, most: 60, whole: true },
  sets: { least: 1, most: 20, whole: true },
  addedWeight: { least: 0, most: 30, whole: false },
} as const;

/** What a rung can raise. */
export type Lever = keyof typeof leverRanges;

const leverValue = (lever: Lever, what: string) => {
  const { least, most, whole } = leverRanges[lever];
  return whole ? count(least, most, what) : number(least, most, what);
};

const restSchema = z
  .union([
    z.strictObject({ seconds: number(0, 1800, 'Rest between reps, seconds.') }),
    z.strictObject({
      timesHold: number(0, 20, 'Rest between reps as a multiple of the hold; follows the hold when a rung raises it.'),
    }),
  ])
  .describe('From the end of a let-down to the next draw, within a set: { "seconds": … } or { "timesHold": … }.');

const resetsSchema = z
  .strictObject({
    hold: leverValue('hold', 'The hold to go back to, seconds.').optional(),
    reps: leverValue('reps', 'The reps to go back to.').optional(),
    sets: leverValue('sets', 'The sets to go back to.').optional(),
    addedWeight: leverValue('addedWeight', 'The added weight to go back to, pounds-force.').optional(),
  })
  .describe("What this rung's every climb sets back, so that the earlier rungs are climbed again.");

const rungOf = <L extends Lever>(lever: L) => {
  const { most, whole } = leverRanges[lever];
  return z.strictObject({
    raise: z.literal(lever).describe('The lever this rung raises.'),
    by: whole ? count(1, most, 'How much one climb raises it.') : number(0.1, most, 'How much one climb raises it.'),
    until: leverValue(lever, 'The value at which the next rung takes over.'),
    resets: resetsSchema.optional(),
  });
};

const rungSchema = z.discriminatedUnion('raise', [
  rungOf('hold'),
  rungOf('reps'),
  rungOf('sets'),
  rungOf('addedWeight'),
]);

const ladderSchema = z.strictObject({
  rungs: z.array(rungSchema).min(1).max(20).describe('In order: a rung is climbed until `until`, then the next.'),
  climbAfter: z
    .strictObject({
      cleanSessions: count(1, 20, 'Clean sessions in a row before a climb.').default(2),
      effortAtMost: number(0, 10, 'A clean session cost no more than this effort.').default(7),
    })
    .prefault({})
    .describe('A clean session held every rep in full.'),
  stepDownAfter: z
    .strictObject({
      missedShare: number(0, 1, "Share of the block's reps short or skipped.").default(0.2),
      sessions: count(1, 10, 'In this many sessions in a row.').default(1),
    })
    .prefault({})
    .describe('When to go one step down.'),
  deload: z
    .strictObject({
      everyWeeks: count(2, 12, 'How many training weeks lie from one to the next.'),
      keep: number(0.2, 0.9, 'The share of the reps that is kept, at least one.'),
    })
    .optional(),
  layoff: z
    .array(
      z.strictObject({
        days: count(1, 365, 'Days since the last session of this program.'),
        stepsDown: count(1, 50, 'Steps to go down.'),
      }),
    )
    .max(20)
    .optional()
    .describe('Days rise from entry to entry.'),
  weeklyGrowth: number(
    1,
    2,
    "This week's hold time is at most this many times the mean of the last four training weeks.",
  ).optional(),
});

const blockSchema = z.strictObject({
  title: z.string().min(1).max(120).describe('What the block is called.'),
  drill: z.enum(['holding', 'power', 'flexibility', 'structure', 'free']).describe('The SPT family.'),
  sets: leverValue('sets', 'Sets.'),
  reps: leverValue('reps', 'Reps in a set.'),
  draw: number(0.5, 30, 'Time to draw, seconds.'),
  hold: leverValue('hold', 'Time at full draw, seconds.'),
  letDown: number(0.5, 30, 'Time to let down, seconds.'),
  rest: restSchema,
  setRest: number(
    0,
    1800,
    'Seconds; replaces `rest` after the last rep of a set. Needed when sets > 1 or another block follows.',
  ).optional(),
  countFrom: z
    .literal('anchor')
    .optional()
    .describe(
      'Where a camera sees the archer, the hold counts from the anchor; otherwise, and without this key, from the call.',
    ),
  letDownTo: z
    .enum(['rest', 'set-up'])
    .default('rest')
    .describe('A power drill lets down only to set-up between reps.'),
  hand: z.enum(['usual', 'opposite', 'both']).default('usual').describe('`both` alternates rep by rep, usual first.'),
  addedWeight: leverValue('addedWeight', "Pounds-force over the bow's own.").default(0),
  calls: z
    .union([z.array(z.string().min(1).max(80)).max(12), z.literal('shot-process')])
    .optional()
    .describe(
      "Lines for the hold, spread evenly, or 'shot-process' for the archer's own steps; said once the archer has allowed them.",
    ),
  ladder: ladderSchema.optional().describe('How the block gets harder; without one it never changes.'),
});

const lines = (what: string) => z.array(z.string().max(200)).max(30).optional().describe(what);

/** The most blocks a program may have. */
export const mostBlocks = 20;

/** What a test counts; each is one published way of scoring. */
export const testMeasures = ['rep-where-form-fails', 'longest-hold-seconds'] as const;

/** The number a test gives: of the rep at which form failed, or the seconds of its one hold. */
export type TestMeasure = (typeof testMeasures)[number];

/**
 * The program file, version 2. Parsing fills in the defaults. Rules between keys are checked by `parseProgram`. Version 2 only added keys, so
 * an object of version 1, as it lies in a backup or on a disk, is read too and becomes one of version 2.
 */
export const programSchema = z.strictObject({
  $schema: text(1000, 'For the editor in which the file is written; not read.').optional(),
  format: z.literal('larkhold/program').describe('Says what the file is.'),
  version: z
    .literal([1, 2])
    .transform((): 2 => 2)
    .describe('The version of the format.'),
  id: z.uuid().optional().describe('The same program through renames and edits.'),
  title: z.string().min(1).max(120).describe('What the program is called.'),
  kind: z
    .literal('test')
    .optional()
    .describe('A test is done as it is written: it is never eased, cut or made harder.'),
  measure: z
    .enum(testMeasures)
    .optional()
    .describe('What a test counts: the rep at which form fails, or the seconds of its one hold.'),
  author: text(120, 'Who wrote it.').optional(),
  about: text(4000, 'What it is for. Shown as text, never as markup.').optional(),
  source: text(1000, 'Where the numbers come from.').optional(),
  tool: z.enum(['bow', 'light-bow', 'band', 'strap']).describe('What is drawn.'),
  warmUp: lines('Shown and spoken before the drill, not timed.'),
  blocks: z.array(blockSchema).min(1).max(mostBlocks).describe('Done in order.'),
  coolDown: lines('Shown and spoken after the drill, not timed.'),
});

/** A drill program as the engine uses it: a valid program file with its defaults filled in. Times are seconds, weights pounds-force. */
export type Program = z.output<typeof programSchema>;
/** A program that measures and is never changed. */
export type TestProgram = Program & { kind: 'test'; measure: TestMeasure };
/** One drill inside a program. */
export type Block = Program['blocks'][number];
/** The ordered levers by which a block gets harder. */
export type Ladder = NonNullable<Block['ladder']>;
/** One lever and how far it goes. */
export type Rung = Ladder['rungs'][number];

/**
 * Whether a program is a test.
 * @param program any program
 * @returns true where it is one and says what it counts
 * @example isTestProgram(builtInPrograms[0]!) // false: the club starter is a drill
 */
export function isTestProgram(program: Program): program is TestProgram {
  return program.kind === 'test' && program.measure !== undefined;
}
