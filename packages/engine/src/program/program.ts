import { z } from 'zod';

z.config({ jitless: true }); // zod's compiled parsers need `eval`, which the app's Content-Security-Policy forbids

const seconds = (least: number, most: number) => z.number().min(least).max(most);
const count = (least: number, most: number) => z.int().min(least).max(most);

export const restSchema = z.union([
  z.strictObject({ seconds: seconds(0, 1800) }),
  z.strictObject({ timesHold: z.number().min(0).max(20) }),
]);

export const leverSchema = z.enum(['hold', 'reps', 'sets', 'addedWeight']);

export const rungSchema = z.strictObject({
  raise: leverSchema,
  by: z.number().positive(),
  until: z.number().positive(),
  resets: z.partialRecord(leverSchema, z.number()).optional(),
});

export const ladderSchema = z.strictObject({
  rungs: z.array(rungSchema).min(1),
  climbAfter: z
    .strictObject({ cleanSessions: count(1, 20).default(2), effortAtMost: z.number().min(0).max(10).default(7) })
    .prefault({}),
  stepDownAfter: z
    .strictObject({ missedShare: z.number().min(0).max(1).default(0.2), sessions: count(1, 10).default(1) })
    .prefault({}),
  deload: z.strictObject({ everyWeeks: count(2, 12), keep: z.number().min(0.2).max(0.9) }).optional(),
  layoff: z.array(z.strictObject({ days: count(1, 365), stepsDown: count(1, 50) })).optional(),
  weeklyGrowth: z.number().min(1).max(2).optional(),
});

export const blockSchema = z.strictObject({
  title: z.string().min(1).max(120),
  drill: z.enum(['holding', 'power', 'flexibility', 'structure', 'free']),
  sets: count(1, 20),
  reps: count(1, 60),
  draw: seconds(0.5, 30),
  hold: seconds(0.5, 180),
  letDown: seconds(0.5, 30),
  rest: restSchema,
  setRest: seconds(0, 1800).optional(),
  letDownTo: z.enum(['rest', 'set-up']).default('rest'),
  hand: z.enum(['usual', 'opposite', 'both']).default('usual'),
  addedWeight: z.number().min(0).max(30).default(0),
  calls: z.union([z.array(z.string().min(1).max(80)).max(12), z.literal('shot-process')]).optional(),
  ladder: ladderSchema.optional(),
});

export const programSchema = z.strictObject({
  format: z.literal('larkhold/program'),
  version: z.literal(1),
  id: z.uuid().optional(),
  title: z.string().min(1).max(120),
  author: z.string().max(120).optional(),
  about: z.string().max(4000).optional(),
  source: z.string().max(1000).optional(),
  tool: z.enum(['bow', 'light-bow', 'band', 'strap']),
  warmUp: z.array(z.string().max(200)).max(30).optional(),
  blocks: z.array(blockSchema).min(1).max(20),
  coolDown: z.array(z.string().max(200)).max(30).optional(),
});

/** A drill program as the engine uses it: a valid program file with its defaults filled in. Times are seconds, weights pounds-force. */
export type Program = z.output<typeof programSchema>;
/** One drill inside a program. */
export type Block = Program['blocks'][number];
/** The ordered levers by which a block gets harder. */
export type Ladder = z.output<typeof ladderSchema>;
/** One lever and how far it goes. */
export type Rung = Ladder['rungs'][number];
/** What a rung can raise. */
export type Lever = z.output<typeof leverSchema>;
