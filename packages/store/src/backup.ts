import {
  createJournal,
  type FileFormat,
  type FileProblem,
  formatLines,
  journalSchema,
  mergeJournals,
  programSchema,
  readFile,
} from '@larkhold/engine';
import { z } from 'zod';
import { kitSchema } from './kit.ts';
import type { Store } from './store.ts';
import type { TakenIn } from './taken-in.ts';

/** Everything of one archer in one file: journal, programs, kit. */
export const backupSchema = z.strictObject({
  format: z.literal('larkhold/backup'),
  version: z.literal(1),
  /** When it was written, ISO 8601. */
  madeAt: z.string().max(40),
  kit: kitSchema,
  programs: z.array(programSchema.refine((program) => program.id !== undefined, 'a stored program needs an id')),
  ...journalSchema.shape,
});
/** Everything of one archer in one file: journal, programs, kit. */
export type Backup = z.output<typeof backupSchema>;

const backupFormat: FileFormat<Backup> = {
  name: 'larkhold/backup',
  thing: 'a backup',
  version: 1,
  limitChars: 128 * 1024 * 1024,
  migrations: [],
  schema: backupSchema,
};

/**
 * Takes everything out of a store, what has not reached its disk included.
 * @param store where from.
 * @param madeAt the instant, ISO 8601.
 * @returns the backup.
 */
export async function createBackup(store: Store, madeAt: string): Promise<Backup> {
  const [journal, programs, kit] = await Promise.all([store.journal(), store.programs(), store.kit()]);
  return { format: 'larkhold/backup', version: 1, madeAt, kit, programs, ...mergeJournals(journal, createJournal()) };
}

/**
 * Writes a backup as a file, one entry a line.
 * @param backup what to write.
 * @returns the file's text.
 */
export function formatBackup(backup: Backup): string {
  const { format, version, madeAt, majorGoal, kit, programs, ...lists } = backup;
  const { weeks, days, drills, notes, milestones } = lists;
  const head = { format, version, madeAt, majorGoal, kit, programs };
  return formatLines({ ...head, weeks, days, drills, notes, milestones });
}

/**
 * Reads a backup file.
 * @param text the file's text.
 * @returns the backup, or what is wrong with the file.
 */
export function parseBackup(text: string): { ok: true; backup: Backup } | { ok: false; problems: FileProblem[] } {
  const read = readFile(text, backupFormat);
  return read.ok ? { ok: true, backup: { ...read.value, ...mergeJournals(read.value, createJournal()) } } : read;
}

/**
 * Puts a backup back, all or nothing. The journal is merged, so nothing newer is lost; programs of the same id and the kit are replaced.
 * @param store where to.
 * @param backup what was read.
 * @param keepsKit leave the kit of this device as it is.
 * @returns what changed, for `takeBack`
 */
export async function restoreBackup(store: Store, backup: Backup, keepsKit = false): Promise<TakenIn> {
  const { format: _format, version: _version, madeAt: _madeAt, kit, programs, ...journal } = backup;
  return store.takeIn({ journal, programs, ...(keepsKit ? {} : { kit }) });
}
