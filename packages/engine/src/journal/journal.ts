import * as z from 'zod';
import { programVersion } from '../program/migrate-program.ts';
import { programSchema } from '../program/program.ts';
import { drillRecordSchema } from './drill-record.ts';
import { journalDaySchema, journalWeekSchema } from './journal-day.ts';
import { journalIdSchema } from './journal-id.ts';
import { journalInstantSchema, journalStampSchema } from './journal-instant.ts';
import { editShape, keepUnknown } from './keep-unknown.ts';
import '../units/plain-parsers.ts';

/** What was shot, by kind. */
export const arrowsSchema = keepUnknown({
  kind: z.enum(['blank bale', 'practice', 'scoring']),
  count: z.int().min(0).max(2000),
  distanceM: z.number().min(0).max(200).optional(),
});
/** What was shot, by kind; distance in metres. */
export type Arrows = z.output<typeof arrowsSchema>;

/** Work without a bow: minutes and effort (0 to 10). */
export const workSchema = keepUnknown({
  kind: z.enum(['strength', 'mobility', 'fitness']),
  minutes: z.number().min(0).max(1440),
  effort: z.number().min(0).max(10).optional(),
});
/** Work without a bow: minutes, and effort 0 to 10. */
export type Work = z.output<typeof workSchema>;

/** The diary of one day; its identity is its date. */
export const dayEntrySchema = keepUnknown({
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
  /** Pain in a joint, or a sharp pain: yes or no. Absent: not answered, which is not "none". */
  pain: z.boolean().optional(),
  note: z.string().max(4000).optional(),
  ...editShape,
});
/** The diary of one day; its identity is its date. */
export type DayEntry = z.output<typeof dayEntrySchema>;

/** One ISO week's page; its identity is the week, '2026-W48'. */
export const weekPageSchema = keepUnknown({
  week: journalWeekSchema,
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
  ...editShape,
});
/** One ISO week's page; its identity is the week. */
export type WeekPage = z.output<typeof weekPageSchema>;

/** A scrap on the notes wall: words, a drawing, or both. */
export const noteScrapSchema = keepUnknown({
  id: journalIdSchema,
  /** When it was put up, ISO 8601. */
  madeAt: journalInstantSchema,
  text: z.string().max(2000).optional(),
  /** Drawn strokes of x, y pairs in 0..1 of a square, as a week's sketch. */
  strokes: z.array(z.array(z.number()).max(4000)).max(400).optional(),
  /** The program it is pinned to, by its id. */
  programId: z.string().max(64).optional(),
  /** The ISO week it is pinned to, '2026-W48'. */
  week: journalWeekSchema.optional(),
  ...editShape,
});
/** A scrap on the notes wall: words, a drawing, or both; pinned to a program, a week, or nothing. */
export type NoteScrap = z.output<typeof noteScrapSchema>;

/** Something to reach or reached, in the archer's own words. */
export const milestoneSchema = keepUnknown({
  id: journalIdSchema,
  text: z.string().min(1).max(400),
  /** The day it was written down. */
  setDay: journalDaySchema,
  /** The day it was reached, as the archer says; absent while it is open. */
  reachedDay: journalDaySchema.optional(),
  /** How it came about. */
  words: z.string().max(1000).optional(),
  ...editShape,
});
/** Something to reach or reached, in the archer's own words; its identity is its id. */
export type Milestone = z.output<typeof milestoneSchema>;

/** A program that the archer opened: the file's content, whole. One that only a newer app can read is kept as it is. */
export const programCopySchema = keepUnknown({
  id: journalIdSchema,
  program: z.record(z.string(), z.unknown()).superRefine((program, context) => {
    if (Number(program.version) > programVersion) return;
    const read = programSchema.safeParse(program);
    if (read.success) return;
    context.issues.push(...read.error.issues.map((issue) => ({ ...issue, input: undefined })));
  }),
  ...editShape,
});
/** A program that the archer opened; its identity is the program's id. */
export type ProgramCopy = z.output<typeof programCopySchema>;

/** What is due over the weeks: the season's own file, whole. */
export const seasonCopySchema = keepUnknown({
  document: z.looseObject({ format: z.literal('larkhold/season'), version: z.int().min(1) }),
  editedAt: journalStampSchema.optional(),
});
/** The season's own file, whole, and when it was last changed. */
export type SeasonCopy = z.output<typeof seasonCopySchema>;

/** The archer's own part of the kit (bow, draw weight, shot process), by the kit's own names; the kit's schema checks each value where it is used. */
export const ownKitSchema = keepUnknown({ editedAt: editShape.editedAt, edits: editShape.edits });
/** The archer's own part of the kit, by the kit's own names. */
export type OwnKit = z.output<typeof ownKitSchema> & { readonly [name: string]: unknown };

/** That something was removed, and when; nothing of what it was. */
export const removalMarkSchema = keepUnknown({
  /** The list that it was in. */
  of: z.string().min(1).max(64),
  /** Its id, day or week. */
  key: z.string().min(1).max(64),
  /** When, ISO 8601; empty where nobody knows. */
  at: z.string().max(60),
});
/** That something was removed, and when; nothing of what it was. */
export type RemovalMark = z.output<typeof removalMarkSchema>;

/** Everything that is the archer's, by day, drill and week. Lists of a newer app are kept as they are. */
export const journalSchema = keepUnknown({
  drills: z.array(drillRecordSchema),
  days: z.array(dayEntrySchema),
  weeks: z.array(weekPageSchema),
  /** The notes wall; absent while it is empty. */
  notes: z.array(noteScrapSchema).optional(),
  /** What was reached and what is open; absent while there is none. */
  milestones: z.array(milestoneSchema).optional(),
  /** Programs that were opened; absent while there is none. */
  opened: z.array(programCopySchema).optional(),
  majorGoal: keepUnknown({ text: z.string().max(1000), editedAt: journalStampSchema }).optional(),
  season: seasonCopySchema.optional(),
  ownKit: ownKitSchema.optional(),
  /** Marks of what was removed; absent while there is none. */
  removed: z.array(removalMarkSchema).optional(),
});
/** Everything that is the archer's, by day, drill and week. */
export type Journal = z.output<typeof journalSchema>;
