import * as z from 'zod';
import { collectionNames, journalCollections, journalSingles, singleNames } from '../journal/collections.ts';
import { type Journal, journalSchema } from '../journal/journal.ts';
import { journalInstantSchema } from '../journal/journal-instant.ts';
import { keepUnknown } from '../journal/keep-unknown.ts';
import { createJournal, mergeJournals } from '../journal/merge-journals.ts';
import { migrateJournal } from '../journal/migrate-journal.ts';
import { type FileFormat, type FileProblem, readFile } from './read-file.ts';

/** The version of journal files that this app writes. Keys may be added without a new one, as every reader keeps those it does not know. */
export const journalVersion = 2;

/** A journal as a file: what one device gives another, and what lies in a box. */
export const journalFileSchema = keepUnknown({
  format: z.literal('larkhold/journal'),
  version: z.literal(journalVersion),
  /** When it was written, ISO 8601. */
  madeAt: journalInstantSchema.optional(),
  ...journalSchema.shape,
});

const journalFormat: FileFormat<z.output<typeof journalFileSchema>> = {
  name: 'larkhold/journal',
  thing: 'journal',
  version: journalVersion,
  // Ten years of a drill a day, 30 reps each, are about 13 million characters.
  limitChars: 64 * 1024 * 1024,
  migrations: [migrateJournal],
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
 * @param madeAt the instant, ISO 8601, if the file is to say when it was written.
 * @returns the file's text. The same journal gives the same text.
 */
export function formatJournal(journal: Journal, madeAt?: string): string {
  return formatLines({ format: 'larkhold/journal', version: journalVersion, madeAt, ...journalLines(journal) });
}

/**
 * A journal's parts in the order in which files hold them: what there is only one of, the lists, what only a newer app knows, and the marks.
 * @param journal any journal.
 * @returns its parts, each row once, in order.
 */
export function journalLines(journal: Journal): Record<string, unknown> {
  const whole = mergeJournals(journal, createJournal());
  const { removed, ...parts } = whole;
  const singles = singleNames.map((name) => [name, parts[name] && inOrder(parts[name], journalSingles[name].schema)]);
  const lists = collectionNames.map((name) => {
    const { schema } = journalCollections[name];
    return [name, parts[name]?.map((row) => inOrder(row, schema))];
  });
  const known = Object.fromEntries([...singles, ...lists]);
  return { ...known, ...parts, ...known, removed };
}

/** A row as a reader would find it: the keys of its schema first, so that a file that was read and written again is the same text. */
function inOrder(row: object, schema: z.ZodType): object {
  const known = schema instanceof z.ZodObject ? Object.keys(schema.shape) : [];
  const isKnown = new Set(known);
  const names = [
    ...known.filter((name) => Object.hasOwn(row, name)),
    ...Object.keys(row).filter((name) => !isKnown.has(name)),
  ];
  return Object.fromEntries(names.map((name) => [name, row[name as keyof typeof row]]));
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
