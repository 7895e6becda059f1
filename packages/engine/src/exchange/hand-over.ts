import * as z from 'zod';
import type { Archer } from '../archer/archer.ts';
import { type Collection, journalCollections } from '../journal/collections.ts';
import { drillRecordSchema } from '../journal/drill-record.ts';
import { dayEntrySchema, type Journal, journalSchema, type WeekPage, weekPageSchema } from '../journal/journal.ts';
import { journalDaySchema } from '../journal/journal-day.ts';
import { journalInstantSchema } from '../journal/journal-instant.ts';
import { createJournal, mergeJournals, visibleJournal } from '../journal/merge-journals.ts';
import { withoutDevice } from '../journal/stamp.ts';
import { type Program, programSchema } from '../program/program.ts';
import { datedSessionsSchema, type Season } from '../season/season.ts';
import { isoWeek } from '../units/calendar-day.ts';
import { handedPlan, handedPlanSchema } from './handed-plan.ts';
import { formatLines } from './journal-file.ts';
import { type FileFormat, type FileProblem, readFile } from './read-file.ts';
import '../units/plain-parsers.ts';

/** What a coach writes back. The archer's app shows it and offers its program; it changes no record. */
export const coachAnswerSchema = z.strictObject({
  /** Who answers, as they call themselves. */
  by: z.string().min(1).max(120),
  /** ISO 8601. */
  madeAt: journalInstantSchema,
  comment: z.string().max(4000),
  /** A program to take on, if the archer wants it. */
  program: programSchema.optional(),
  /** What to do on which day, from a first day to a last. */
  dated: datedSessionsSchema.optional(),
});
/** What a coach writes back. */
export type CoachAnswer = z.output<typeof coachAnswerSchema>;

/** A stretch of an archer's journal for the coach to read, and what the coach answers. */
export const handOverSchema = z.strictObject({
  format: z.literal('larkhold/hand-over'),
  version: z.literal(1),
  /** The same archer in every file, so that a squad's files sort themselves. */
  archerId: z.string().min(1).max(64),
  /** The archer's name, as they call themselves. */
  archer: z.string().min(1).max(120),
  /** When it was written, ISO 8601. */
  madeAt: journalInstantSchema,
  /** First and last day, both included. */
  from: journalDaySchema,
  to: journalDaySchema,
  includesNotes: z.boolean(),
  /** False where the archer told nothing of pain, so that a coach does not take silence for none. */
  includesPain: z.boolean().optional(),
  majorGoal: journalSchema.shape.majorGoal,
  /** The programs that the archer is on: what was planned. */
  programs: z.array(programSchema).max(20),
  /** What was planned in these days, and what was done of it; absent where nothing was written down. */
  plan: handedPlanSchema.optional(),
  answers: z.array(coachAnswerSchema).max(100),
  weeks: z.array(weekPageSchema),
  days: z.array(dayEntrySchema),
  drills: z.array(drillRecordSchema),
  /** What is open, and what was reached up to the last day. */
  milestones: journalSchema.shape.milestones,
});
/** A stretch of an archer's journal for the coach to read, and what the coach answers. */
export type HandOver = z.output<typeof handOverSchema>;

const handOverFormat: FileFormat<HandOver> = {
  name: 'larkhold/hand-over',
  thing: 'handOver',
  version: 1,
  limitChars: 64 * 1024 * 1024,
  migrations: [],
  schema: handOverSchema,
};

/** What a hand-over is made from. */
export interface HandOverInput {
  journal: Journal;
  archerId: string;
  archer: string;
  /** First and last day, ISO 8601, both included. */
  from: string;
  to: string;
  /** The instant it is written, ISO 8601. */
  madeAt: string;
  /** Notes are private: every free text about a day or a drill, and the week's review, is left out unless this is true. */
  includesNotes?: boolean;
  /** Whether pain is reported: it is, unless this is false. */
  includesPain?: boolean;
  programs?: HandOver['programs'];
  /** The archer's own season: what was planned is set beside what was done. */
  season?: Season;
  /** All programs that the season may name; without them those that are handed over. */
  rack?: readonly Program[];
  /** Who the archer is, as `prescribe` reads it. */
  self?: Archer;
}

/**
 * Makes a hand-over of a chosen span. Removed things are left out.
 * @param input see `HandOverInput`.
 * @returns the hand-over, with no answer yet.
 * @throws RangeError if the span ends before it begins.
 */
export function createHandOver(input: HandOverInput): HandOver {
  const { from, to, archer, archerId, madeAt, includesNotes = false, programs = [], season, rack, self } = input;
  const { includesPain = true } = input;
  if (to < from) throw new RangeError(`to: expected a day from ${from} on, got ${to}`);
  const journal = visibleJournal(mergeJournals(input.journal, createJournal()));
  const span = { from, to, includesNotes, includesPain };
  const { drills, days, weeks, milestones } = journalCollections;
  // What was asked on a day tells of pain too, by being less: where pain is left out, it is as if nobody had said anything.
  const told = includesPain ? journal : withoutPain(journal);
  const known = { journal: told, programs: rack ?? programs, from, to, ...(self ? { archer: self } : {}) };
  const plan = season && handedPlan({ season, ...known });
  const reached = handed(milestones, journal.milestones ?? [], span);
  return {
    format: 'larkhold/hand-over',
    version: 1,
    archerId,
    archer,
    madeAt,
    from,
    to,
    includesNotes,
    ...(includesPain ? {} : { includesPain }),
    ...(journal.majorGoal === undefined ? {} : { majorGoal: goalOf(journal.majorGoal) }),
    programs: [...programs],
    ...(plan === undefined ? {} : { plan }),
    answers: [],
    weeks: handed(weeks, journal.weeks, span),
    days: handed(days, journal.days, span),
    drills: handed(drills, journal.drills, span),
    ...(reached.length === 0 ? {} : { milestones: reached }),
  };
}

/**
 * Adds a coach's answer to a hand-over, to be sent back as a file.
 * @param handOver the archer's file; it is left as it is.
 * @param answer the comment, and a program or dated sessions if there are any to take on.
 * @returns a new hand-over with this answer last.
 * @throws TypeError if the answer is not valid.
 */
export function answerHandOver(handOver: HandOver, answer: CoachAnswer): HandOver {
  const read = coachAnswerSchema.safeParse(answer);
  if (!read.success) throw new TypeError(`answer: ${read.error.issues[0]?.message ?? 'not valid'}`);
  return { ...handOver, answers: [...handOver.answers, read.data] };
}

/**
 * Keeps a coach's comment on the page of the week that the hand-over ends in. This is all that a returned file may do to a journal: its
 * records are the archer's own, as they were when they were sent, and are never merged back.
 * @param journal the archer's journal.
 * @param handOver the returned file.
 * @param editedAt the instant, ISO 8601 UTC.
 * @returns the week page to put, all answers in order; undefined if there is none, or the page holds them already.
 */
export function commentedWeek(journal: Journal, handOver: HandOver, editedAt: string): WeekPage | undefined {
  const week = isoWeek(handOver.to);
  const comments = handOver.answers
    .filter(({ comment }) => comment !== '')
    .map(({ by, comment }) => `${by}: ${comment}`);
  const page: WeekPage = visibleJournal(journal).weeks.find((one) => one.week === week) ?? { week };
  const fresh = comments.filter((comment) => !page.comment?.includes(comment));
  if (fresh.length === 0) return undefined;
  const comment = [...(page.comment ? [page.comment] : []), ...fresh].join('\n\n');
  return { ...page, comment: cutOff(comment, 4000), editedAt };
}

/**
 * Reads a hand-over file.
 * @param text the file's text.
 * @returns the hand-over, or what is wrong with the file.
 */
export function parseHandOver(text: string): { ok: true; handOver: HandOver } | { ok: false; problems: FileProblem[] } {
  const read = readFile(text, handOverFormat);
  if (!read.ok) return read;
  const { drills: sent, days: diary, weeks: pages, milestones: goals } = read.value;
  const rows = { drills: sent, days: diary, weeks: pages, ...(goals ? { milestones: goals } : {}) };
  const { drills, days, weeks, milestones } = mergeJournals(rows, createJournal());
  return { ok: true, handOver: { ...read.value, drills, days, weeks, ...(milestones ? { milestones } : {}) } };
}

/**
 * Writes a hand-over as a file, one entry a line.
 * @param handOver what to write.
 * @returns the file's text.
 */
export function formatHandOver(handOver: HandOver): string {
  const { format, version, archerId, archer, madeAt, from, to, includesNotes, includesPain, majorGoal, ...lists } =
    handOver;
  const { programs, plan, answers, weeks, days, drills, milestones } = lists;
  const head = { format, version, archerId, archer, madeAt, from, to, includesNotes, includesPain, majorGoal };
  return formatLines({ ...head, programs, plan, answers, weeks, days, drills, milestones });
}

/** Rows of the span, each with the fields that the coach may read and no others: also not those that only a newer app knows. */
function handed<Row extends object>(
  { fields, isWithin }: Collection<Row>,
  rows: readonly Row[],
  span: { from: string; to: string; includesNotes: boolean; includesPain: boolean },
): Row[] {
  const { from, to, includesNotes, includesPain } = span;
  const readers = new Map<string, unknown>(Object.entries(fields));
  const isRead = (field: string): boolean =>
    (field !== 'pain' || includesPain) &&
    (readers.get(field) === 'always' || (includesNotes && readers.get(field) === 'with notes'));
  const within = rows.filter((row) => isWithin?.(row, from, to));
  return within.map((row) => {
    const shown = Object.entries(row).flatMap(([field, value]) => {
      if (field === 'editedAt' && typeof value === 'string') return [[field, withoutDevice(value)]];
      return isRead(field) && value !== undefined ? [[field, value]] : [];
    });
    return Object.fromEntries(shown) as Row;
  });
}

function goalOf({ text, editedAt }: NonNullable<Journal['majorGoal']>): NonNullable<Journal['majorGoal']> {
  return { text, editedAt: withoutDevice(editedAt) };
}

function cutOff(text: string, length: number): string {
  return text.length <= length ? text : `${text.slice(0, length - 1)}…`;
}

function withoutPain({ drills, days }: Journal): Pick<Journal, 'drills' | 'days'> {
  const left = <Row extends { pain?: boolean }>({ pain: _, ...row }: Row) => row;
  return { drills: drills.map(left), days: days.map(left) };
}
