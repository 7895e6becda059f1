import { z } from 'zod';
import { drillRecordSchema } from '../journal/drill-record.ts';
import { dayEntrySchema, type Journal, journalSchema, weekPageSchema } from '../journal/journal.ts';
import { createJournal, mergeJournals } from '../journal/merge-journals.ts';
import { type FileFormat, type FileProblem, readFile } from './read-file.ts';

/** A journal as a file: what one device gives another, and the diary's part of a backup. */
export const journalFileSchema = z.strictObject({
  format: z.literal('larkhold/journal'),
  version: z.literal(1),
  /** When it was written, ISO 8601. */
  madeAt: z.string().max(40).optional(),
  majorGoal: journalSchema.shape.majorGoal,
  weeks: z.array(weekPageSchema),
  days: z.array(dayEntrySchema),
  drills: z.array(drillRecordSchema),
  notes: journalSchema.shape.notes,
  milestones: journalSchema.shape.milestones,
});

const journalFormat: FileFormat<z.output<typeof journalFileSchema>> = {
  name: 'larkhold/journal',
  thing: 'a journal',
  version: 1,
  // Ten years of a drill a day, 30 reps each, are about 13 million characters.
  limitChars: 64 * 1024 * 1024,
  migrations: [],
  schema: journalFileSchema,
};

/**
 * Reads a journal file.
 * @param text the file's text.
 * @returns the journal, each thing once, in order; or what is wrong with the file.
 */
export function parseJournal(
  text: string,
): { ok: true; journal: Journal; madeAt?: string } | { ok: false; problems: FileProblem[] } {
  const read = readFile(text, journalFormat);
  if (!read.ok) return read;
  const { format: _format, version: _version, madeAt, ...stored } = read.value;
  const journal = mergeJournals(stored, createJournal());
  return { ok: true, journal, ...(madeAt === undefined ? {} : { madeAt }) };
}

/**
 * Writes a journal as a file, one entry a line, marks of removed things included.
 * @param journal what to write; an id that comes twice is written once.
 * @param madeAt the instant, ISO 8601, if the file shall say when it was written.
 * @returns the file's text. The same journal gives the same text.
 */
export function formatJournal(journal: Journal, madeAt?: string): string {
  const { drills, days, weeks, notes, milestones, majorGoal } = mergeJournals(journal, createJournal());
  const head = { format: 'larkhold/journal', version: 1, madeAt, majorGoal };
  return formatLines({ ...head, weeks, days, drills, notes, milestones });
}

/**
 * Writes an object as JSON with one line a key, and one line an item of a list.
 * @param file its keys in order; those that hold `undefined` are left out.
 * @returns the text, with a final newline.
 */
export function formatLines(file: Record<string, unknown>): string {
  const lines = Object.entries(file)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => {
      const items = Array.isArray(value) ? value.map((item) => `\n    ${JSON.stringify(item)}`) : undefined;
      const text = items === undefined || items.length === 0 ? JSON.stringify(value) : `[${items.join(',')}\n  ]`;
      return `  ${JSON.stringify(key)}: ${text}`;
    });
  return `{\n${lines.join(',\n')}\n}\n`;
}
