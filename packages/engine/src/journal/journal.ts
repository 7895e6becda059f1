import { z } from 'zod';
import { drillRecordSchema } from './drill-record.ts';
import { journalDaySchema } from './journal-day.ts';

/** What was shot, by kind. */
export const arrowsSchema = z.strictObject({
  kind: z.enum(['blank bale', 'practice', 'scoring']),
  count: z.int().min(0).max(2000),
  distanceM: z.number().min(0).max(200).optional(),
});
/** What was shot, by kind; distance in metres. */
export type Arrows = z.output<typeof arrowsSchema>;

/** Work without a bow: minutes and effort (0 to 10). */
export const workSchema = z.strictObject({
  kind: z.enum(['strength', 'mobility', 'fitness']),
  minutes: z.number().min(0).max(1440),
  effort: z.number().min(0).max(10).optional(),
});
/** Work without a bow: minutes, and effort 0 to 10. */
export type Work = z.output<typeof workSchema>;

/** The diary of one day; its identity is its date. */
export const dayEntrySchema = z.strictObject({
  date: journalDaySchema,
  arrows: z.array(arrowsSchema).max(50).optional(),
  /** Where arrows were shot, as the archer calls it. */
  place: z.string().min(1).max(60).optional(),
  shootingEffort: z.number().min(0).max(10).optional(),
  shootingMinutes: z.number().min(0).max(1440).optional(),
  work: z.array(workSchema).max(50).optional(),
  /** Five steps, 1 (poor) to 5 (very good). */
  feel: z.int().min(1).max(5).optional(),
  feelWords: z.string().max(200).optional(),
  /** Today's own word before drilling. */
  readiness: z.enum(['fresh', 'as usual', 'heavy']).optional(),
  pain: z.boolean().optional(),
  note: z.string().max(4000).optional(),
  editedAt: z.string().optional(),
  removed: z.literal(true).optional(),
});
/** The diary of one day; its identity is its date. */
export type DayEntry = z.output<typeof dayEntrySchema>;

/** One ISO week's page; its identity is the week, '2026-W48'. */
export const weekPageSchema = z.strictObject({
  week: z.string().regex(/^\d{4}-W\d{2}$/),
  goal: z.string().max(1000).optional(),
  focus: z.string().max(400).optional(),
  /** The sketch of the focus: strokes of x, y pairs in 0..1 of a square. */
  sketch: z.array(z.array(z.number()).max(4000)).max(400).optional(),
  /** Days on which a drill is planned: 1 for Monday to 7 for Sunday. */
  plannedDays: z.array(z.int().min(1).max(7)).max(7).optional(),
  wentRight: z.string().max(4000).optional(),
  needsWork: z.string().max(4000).optional(),
  carriedForward: z.string().max(1000).optional(),
  comment: z.string().max(4000).optional(),
  editedAt: z.string().optional(),
  removed: z.literal(true).optional(),
});
/** One ISO week's page; its identity is the week. */
export type WeekPage = z.output<typeof weekPageSchema>;

/** A scrap on the notes wall: words, a drawing, or both. */
export const noteScrapSchema = z.strictObject({
  id: z.string().min(1).max(64),
  /** When it was put up, ISO 8601. */
  madeAt: z.string().max(40),
  text: z.string().max(2000).optional(),
  /** Drawn strokes of x, y pairs in 0..1 of a square, as a week's sketch. */
  strokes: z.array(z.array(z.number()).max(4000)).max(400).optional(),
  /** The program it is pinned to, by its id. */
  programId: z.string().max(64).optional(),
  /** The ISO week it is pinned to, '2026-W48'. */
  week: z
    .string()
    .regex(/^\d{4}-W\d{2}$/)
    .optional(),
  editedAt: z.string().optional(),
  removed: z.literal(true).optional(),
});
/** A scrap on the notes wall: words, a drawing, or both; pinned to a program, a week, or nothing. */
export type NoteScrap = z.output<typeof noteScrapSchema>;

/** Something to reach or reached, in the archer's own words. */
export const milestoneSchema = z.strictObject({
  id: z.string().min(1).max(64),
  text: z.string().min(1).max(400),
  /** The day it was written down. */
  setDay: journalDaySchema,
  /** The day it was reached, as the archer says; absent while it is open. */
  reachedDay: journalDaySchema.optional(),
  /** How it came about. */
  words: z.string().max(1000).optional(),
  editedAt: z.string().optional(),
  removed: z.literal(true).optional(),
});
/** Something to reach or reached, in the archer's own words; its identity is its id. */
export type Milestone = z.output<typeof milestoneSchema>;

/** Everything that was done, by day, drill and week. */
export const journalSchema = z.strictObject({
  drills: z.array(drillRecordSchema),
  days: z.array(dayEntrySchema),
  weeks: z.array(weekPageSchema),
  /** The notes wall; absent while it is empty. */
  notes: z.array(noteScrapSchema).optional(),
  /** What was reached and what is open; absent while there is none. */
  milestones: z.array(milestoneSchema).optional(),
  majorGoal: z.strictObject({ text: z.string().max(1000), editedAt: z.string() }).optional(),
});
/** Everything that was done, by day, drill and week. */
export type Journal = z.output<typeof journalSchema>;
