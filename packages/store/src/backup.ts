import {
  createJournal,
  type FileFormat,
  type FileProblem,
  formatLines,
  journalInstantSchema,
  journalLines,
  journalSchema,
  keepUnknown,
  mergeJournals,
  migrateJournal,
  readFile,
} from '@larkhold/engine';
import * as z from 'zod';
import { type Kit, kitSchema } from './kit.ts';
import type { Store } from './store.ts';

/** Everything of one archer in one file: the journal with its programs, and the kit of the device. */
export const backupSchema = keepUnknown({
  format: z.literal('larkhold/backup'),
  version: z.literal(2),
  /** When it was written, ISO 8601. */
  madeAt: journalInstantSchema,
  kit: kitSchema,
  ...journalSchema.shape,
});
/** A kit as it travels. Nobody may allow a line to be said at full draw by a file: that is asked for on every device. */
export type CarriedKit = Omit<Kit, 'callAnswers'>;

/** Everything of one archer in one file: journal, programs, kit. */
export type Backup = Omit<z.output<typeof backupSchema>, 'kit'> & { kit: CarriedKit };

const backupFormat: FileFormat<z.output<typeof backupSchema>> = {
  name: 'larkhold/backup',
  thing: 'backup',
  version: 2,
  limitChars: 128 * 1024 * 1024,
  migrations: [wrapPrograms],
  schema: backupSchema,
};

/**
 * Takes everything out of a store, what has not reached its disk included.
 * @param store where from.
 * @param madeAt the instant, ISO 8601.
 * @returns the backup.
 */
export async function createBackup(store: Store, madeAt: string): Promise<Backup> {
  const [journal, kit] = await Promise.all([store.journal(), store.kit()]);
  const merged = mergeJournals(journal, createJournal());
  return { format: 'larkhold/backup', version: 2, madeAt, kit, ...merged };
}

/**
 * Writes a backup as a file, one entry a line.
 * @param backup what to write.
 * @returns the file's text.
 */
export function formatBackup(backup: Backup): string {
  const { format, version, madeAt, kit, ...journal } = backup;
  return formatLines({ format, version, madeAt, kit: carried(kit), ...journalLines(journal) });
}

/**
 * Reads a backup file.
 * @param text the file's text.
 * @returns the backup, or what is wrong with the file.
 */
export function parseBackup(text: string): { ok: true; backup: Backup } | { ok: false; problems: FileProblem[] } {
  const read = readFile(text, backupFormat);
  if (!read.ok) return read;
  const { format, version, madeAt, kit, ...journal } = read.value;
  return {
    ok: true,
    backup: { format, version, madeAt, kit: carried(kit), ...mergeJournals(journal, createJournal()) },
  };
}

function carried({ callAnswers: _answers, ...kit }: CarriedKit & Partial<Kit>): CarriedKit {
  return kit;
}

/** Version 2 holds programs as the journal does, each with its id beside it, so that they are merged. */
function wrapPrograms(file: Record<string, unknown>): Record<string, unknown> {
  const { programs, ...rest } = migrateJournal(file);
  if (!Array.isArray(programs)) throw new TypeError('programs: expected a list');
  return {
    ...rest,
    opened: programs.map((program: unknown) => ({ id: Object(program).id, program })),
  };
}
