import { formatCalendar, formatCsv, formatJournal, journalTables } from '@larkhold/engine';
import { calendarWords } from '@larkhold/words';
import { type JournalFile, journalOf } from './file-kinds.ts';
import { formatParquet } from './format-parquet.ts';
import { openFile, writeFile } from './open-file.ts';
import type { Surroundings } from './surroundings.ts';

/** What a journal can be turned into. */
export const targets = ['csv', 'ics', 'parquet', 'journal'] as const;
/** Tables that CSV and Parquet can have, the usual one first. */
export const tables = ['drills', 'reps', 'days'] as const;

/** What `larkhold convert` is asked. */
export interface ConvertOptions {
  to: (typeof targets)[number];
  /** Which table, for CSV and Parquet. */
  table: (typeof tables)[number];
  /** Notes are private: left out of a calendar unless this is true. */
  notes?: boolean;
  output?: string;
}

/**
 * `larkhold convert`: a journal, backup or hand-over as CSV, iCalendar, Parquet or a journal file.
 * @param path the file, `-` for standard input
 * @param options what to
 * @param around the surroundings
 */
export async function convertFile(path: string, options: ConvertOptions, around: Surroundings): Promise<void> {
  const file = await openFile(path, ['journal', 'backup', 'hand-over'], around);
  await writeFile(options.output ?? '-', contentOf(file, options, around), around);
}

function contentOf(file: JournalFile, { to, table, notes = false }: ConvertOptions, around: Surroundings) {
  const journal = journalOf(file);
  const madeAt = around.instant();
  const options = { madeAt, words: calendarWords(), includesNotes: notes, ...ownerOf(file) };
  if (to === 'ics') return formatCalendar(journal, options);
  if (to === 'journal') return formatJournal(journal, madeAt);
  const rows = journalTables(journal)[table];
  return to === 'csv' ? formatCsv(rows) : formatParquet(rows);
}

/** Whose journal it is, where the file says; a calendar of two archers keeps their days apart by it. */
function ownerOf(file: JournalFile): { archerId?: string } {
  if (file.kind === 'hand-over') return { archerId: file.handOver.archerId };
  if (file.kind === 'backup' && file.backup.kit.archer) return { archerId: file.backup.kit.archer.id };
  return {};
}
