import type * as z from 'zod';
import { isoWeek } from '../units/calendar-day.ts';
import { type DrillRecord, drillRecordSchema } from './drill-record.ts';
import { compareInstants } from './edit-order.ts';
import type { FieldGroup, MergeRules } from './field-groups.ts';
import {
  type DayEntry,
  dayEntrySchema,
  journalSchema,
  type Milestone,
  milestoneSchema,
  type NoteScrap,
  noteScrapSchema,
  ownKitSchema,
  type ProgramCopy,
  programCopySchema,
  seasonCopySchema,
  type WeekPage,
  weekPageSchema,
} from './journal.ts';
import type { editShape } from './keep-unknown.ts';
import { compareText } from './stamp.ts';

/** Who reads a field besides the archer: a coach always, a coach to whom notes are shown, or nobody. */
export type Reader = 'always' | 'with notes' | 'never';

/** One list of a journal, and all that anything needs of it: merging, comparing, handing over, storing. */
export interface Collection<Row> extends MergeRules {
  /** `thing`: made once; what was removed stays so until it is put back. `page`: of the calendar; removing empties it, and what is written later is kept. */
  readonly kind: 'thing' | 'page';
  readonly keyName: string & keyof Row;
  readonly schema: z.ZodType<Row>;
  /** Who reads each field. A field that is not here is handed to nobody. */
  readonly fields: { readonly [Field in Exclude<keyof Row, keyof typeof editShape>]-?: Reader };
  /** The order of rows. */
  compareRows(a: Row, b: Row): number;
  /** Whether a hand-over of these days holds the row; left out where no hand-over does. */
  isWithin?(row: Row, from: string, to: string): boolean;
}

const drills: Collection<DrillRecord> = {
  kind: 'thing',
  keyName: 'id',
  schema: drillRecordSchema,
  fields: {
    ...{ id: 'always', program: 'always', programId: 'always', date: 'always', startedAt: 'always', endedAt: 'always' },
    ...{ reps: 'always', effort: 'always', pain: 'always', note: 'with notes', prescribedReps: 'always' },
    ...{ durationMs: 'always', onFingersLbf: 'always', tool: 'always', open: 'always', kind: 'always' },
  },
  // What the session itself wrote is of one piece.
  groups: asGroup('session', [
    ...['program', 'programId', 'date', 'startedAt', 'endedAt', 'reps', 'prescribedReps', 'durationMs', 'onFingersLbf'],
    ...['tool', 'open', 'kind'],
  ]),
  compareGroups: { session: compareSessions },
  compareRows: (a, b) =>
    compareText(a.date, b.date) || compareInstants(a.startedAt, b.startedAt) || compareText(a.id, b.id),
  isWithin: ({ date }, from, to) => from <= date && date <= to,
};

const days: Collection<DayEntry> = {
  kind: 'page',
  keyName: 'date',
  schema: dayEntrySchema,
  fields: {
    ...{ date: 'always', arrows: 'always', place: 'with notes', shootingEffort: 'always', shootingMinutes: 'always' },
    ...{ work: 'always', feel: 'always', feelWords: 'with notes', readiness: 'always', pain: 'always' },
    note: 'with notes',
  },
  groups: {
    ...asGroup('feel', ['feel', 'feelWords']),
    ...asGroup('shooting', ['shootingEffort', 'shootingMinutes']),
  },
  compareRows: (a, b) => compareText(a.date, b.date),
  isWithin: ({ date }, from, to) => from <= date && date <= to,
};

/** Goal, focus and sketch are what the coach and the archer work on; the review is the archer's own. */
const weeks: Collection<WeekPage> = {
  kind: 'page',
  keyName: 'week',
  schema: weekPageSchema,
  fields: {
    ...{ week: 'always', goal: 'always', focus: 'always', sketch: 'always', plannedDays: 'always' },
    ...{ wentRight: 'with notes', needsWork: 'with notes', carriedForward: 'with notes', comment: 'with notes' },
  },
  groups: asGroup('focus', ['focus', 'sketch']),
  compareRows: (a, b) => compareText(a.week, b.week),
  isWithin: ({ week }, from, to) => isoWeek(from) <= week && week <= isoWeek(to),
};

const notes: Collection<NoteScrap> = {
  kind: 'thing',
  keyName: 'id',
  schema: noteScrapSchema,
  fields: { id: 'never', madeAt: 'never', text: 'never', strokes: 'never', programId: 'never', week: 'never' },
  groups: asGroup('pin', ['programId', 'week']),
  compareRows: (a, b) =>
    compareInstants(a.madeAt, b.madeAt) || compareText(a.madeAt, b.madeAt) || compareText(a.id, b.id),
};

const milestones: Collection<Milestone> = {
  kind: 'thing',
  keyName: 'id',
  schema: milestoneSchema,
  fields: { id: 'always', text: 'always', setDay: 'always', reachedDay: 'always', words: 'with notes' },
  groups: asGroup('reached', ['reachedDay', 'words']),
  compareRows: (a, b) => compareText(a.setDay, b.setDay) || compareText(a.id, b.id),
  // What is open, and what was reached up to the last day.
  isWithin: ({ setDay, reachedDay }, _from, to) => setDay <= to && (reachedDay ?? to) <= to,
};

const opened: Collection<ProgramCopy> = {
  kind: 'thing',
  keyName: 'id',
  schema: programCopySchema,
  fields: { id: 'never', program: 'never' },
  compareRows: (a, b) => compareText(a.id, b.id),
};

/** The lists of a journal. Merging, comparing, handing over, files and the store's tables all go through this one table. */
export const journalCollections = { drills, days, weeks, notes, milestones, opened } as const;
/** The name of one of a journal's lists. */
export type CollectionName = keyof typeof journalCollections;
/** The names of a journal's lists, in order. */
export const collectionNames = Object.keys(journalCollections) as readonly CollectionName[];

/** Something that a journal holds only one of; it is merged by field as rows are. */
export interface Single extends MergeRules {
  readonly schema: z.ZodType;
}

/** What a journal holds only one of: goal, season, the archer's part of the kit. */
export const journalSingles: { readonly [Name in 'majorGoal' | 'season' | 'ownKit']: Single } = {
  majorGoal: { schema: journalSchema.shape.majorGoal.unwrap() },
  season: { schema: seasonCopySchema },
  ownKit: { schema: ownKitSchema },
};
/** The name of something that a journal holds only one of. */
export type SingleName = keyof typeof journalSingles;
/** The names of what a journal holds only one of. */
export const singleNames = Object.keys(journalSingles) as readonly SingleName[];

/**
 * Of two copies of one session: the one that had ended; of two open ones the one that got further, whatever was edited on it since.
 * Where neither decides, the stamps do.
 */
function compareSessions(a: FieldGroup, b: FieldGroup): number {
  const isOpen = ({ value }: FieldGroup): boolean => value.open === true;
  const repCount = ({ value }: FieldGroup): number => (Array.isArray(value.reps) ? value.reps.length : 0);
  if (isOpen(a) !== isOpen(b)) return isOpen(a) ? -1 : 1;
  return isOpen(a) ? repCount(a) - repCount(b) : 0;
}

function asGroup(name: string, fields: readonly string[]): Record<string, string> {
  return Object.fromEntries(fields.map((field) => [field, name]));
}
