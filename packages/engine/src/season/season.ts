import * as z from 'zod';
import { journalDaySchema } from '../journal/journal-day.ts';
import '../units/plain-parsers.ts';

const text = (most: number, what: string) => z.string().max(most).describe(what);
const title = (what: string) => z.string().min(1).max(120).describe(what);
const day = (what: string) => journalDaySchema.describe(what);

/** The weekdays as a season file names them, in the order of ISO 8601. */
export const weekdays = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'] as const;

const programRefSchema = z.strictObject({
  id: z.uuid().optional().describe("The program's id, where it has one; it outlives a change of title."),
  title: title("The program's title."),
});

const programsSchema = z
  .array(programRefSchema)
  .min(1)
  .max(4)
  .describe('Done in this order: holding, power and flexibility side by side; structure before shooting.');

const blockSchema = z.strictObject({
  title: title('What the block is for.'),
  from: day('The first day, ISO 8601; its weeks are counted from here.'),
  weeks: z.int().min(4).max(8).describe('How many weeks it lasts.'),
  days: z
    .strictObject(
      Object.fromEntries(weekdays.map((name) => [name, programsSchema.optional()])) as Record<
        (typeof weekdays)[number],
        z.ZodOptional<typeof programsSchema>
      >,
    )
    .describe('For each weekday the programs of that day; a weekday that is not named is a rest day.'),
  lighterWeeks: z.array(z.int().min(1).max(8)).max(4).default([]).describe('Which of its weeks are lighter, from 1.'),
  keep: z.number().min(0.2).max(0.9).default(0.6).describe('The share of the reps that a lighter week keeps.'),
});

const testSchema = z.strictObject({
  day: day('The day of the test, ISO 8601.'),
  program: programRefSchema.describe('A program of kind test.'),
});

const competitionSchema = z.strictObject({
  title: title('What the competition is called.'),
  day: day('Its first day, ISO 8601.'),
  lastDay: day('Its last day, where it lasts longer than one.').optional(),
  importance: z
    .enum(['main', 'middle', 'minor'])
    .describe('Two lighter weeks before a main one, one before a middle one; the day before each is a rest day.'),
});

const restSchema = z.strictObject({
  from: day('The first rest day, ISO 8601.'),
  to: day('The last one, which may be the same day.'),
  why: text(200, 'The reason, in the words of whoever writes it.').optional(),
});

const sessionSchema = z.strictObject({
  day: day('The day, ISO 8601.'),
  programs: programsSchema,
  minutes: z.int().min(1).max(240).describe('The minutes that there are for each of them.').optional(),
});

/** What a coach writes for the coming weeks: every day from the first to the last, those without a session too. */
export const datedSessionsSchema = z.strictObject({
  by: title('Who writes them.'),
  madeAt: z.iso
    .datetime({ offset: true })
    .describe('When they were written, ISO 8601; of two that speak of the same day the later one counts.'),
  from: day('The first day they speak of.'),
  to: day('The last day they speak of, at most 62 days in all.'),
  sessions: z.array(sessionSchema).max(62).describe('A day that is not named is a rest day.'),
});

/** The season file, version 1. Parsing fills in the defaults. Rules between keys are checked by `parseSeason`. */
export const seasonSchema = z.strictObject({
  $schema: text(1000, 'For the editor in which the file is written; not read.').optional(),
  format: z.literal('larkhold/season').describe('Says what the file is.'),
  version: z.literal(1).describe('The version of the format.'),
  id: z.uuid().optional().describe('The same season through renames and edits.'),
  title: title('What the season is called.'),
  author: text(120, 'Who wrote it.').optional(),
  about: text(4000, 'What it is for. Shown as text, never as markup.').optional(),
  blocks: z.array(blockSchema).max(20).describe('Stretches of 4 to 8 weeks, each with its weekdays.'),
  tests: z.array(testSchema).max(40).default([]).describe('Days on which a test is due.'),
  competitions: z.array(competitionSchema).max(40).default([]).describe('Days to be fresh for.'),
  restDays: z
    .array(restSchema)
    .max(60)
    .default([])
    .describe('Days and stretches without a bow: holidays, exams, travel.'),
  dated: z.array(datedSessionsSchema).max(12).default([]).describe('What a coach wrote for certain days.'),
});

/** What is due over the weeks: a valid season file with its defaults filled in. */
export type Season = z.output<typeof seasonSchema>;
/** Names a program: by its id where both have one, else by its title. */
export type ProgramRef = z.output<typeof programRefSchema>;
/** A stretch of 4 to 8 weeks with programs on weekdays. */
export type SeasonBlock = Season['blocks'][number];
/** A day or days to be fresh for. */
export type Competition = Season['competitions'][number];
/** What a coach wrote for certain days. */
export type DatedSessions = z.output<typeof datedSessionsSchema>;
