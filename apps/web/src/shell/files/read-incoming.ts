import {
  type FileProblem,
  type HandOver,
  type Journal,
  namedFormat,
  type Program,
  parseHandOver,
  parseJournal,
  parseProgram,
  readablePrograms,
} from '@larkhold/engine';
import { type CarriedKit, parseBackup } from '@larkhold/store';

/** What a file that came in turned out to be. Nothing has been changed yet. */
export type Incoming =
  | { kind: 'journal'; journal: Journal; programs: readonly Program[]; kit?: CarriedKit; madeAt?: string }
  | { kind: 'hand-over'; handOver: HandOver }
  | { kind: 'program'; program: Program }
  | { kind: 'refused'; problems: readonly FileProblem[] };

/**
 * Reads a backup, a journal, a hand-over or a program, whichever the file says it is. Changes nothing.
 * @param text what is in the file
 * @returns what it is; a file of no known kind is refused as a journal is
 */
export function readIncoming(text: string): Incoming {
  const format = namedFormat(text);
  if (format === 'backup') {
    const read = parseBackup(text);
    if (!read.ok) return { kind: 'refused', problems: read.problems };
    const { format: _format, version: _version, kit, madeAt, ...journal } = read.backup;
    return { kind: 'journal', journal, programs: readablePrograms(journal), kit, madeAt };
  }
  if (format === 'hand-over') {
    const read = parseHandOver(text);
    return read.ok ? { kind: 'hand-over', handOver: read.handOver } : { kind: 'refused', problems: read.problems };
  }
  if (format === 'program') {
    const read = parseProgram(text);
    return read.ok ? { kind: 'program', program: read.program } : { kind: 'refused', problems: read.problems };
  }
  const read = parseJournal(text);
  if (!read.ok) return { kind: 'refused', problems: read.problems };
  const { journal, madeAt } = read;
  return { kind: 'journal', journal, programs: readablePrograms(journal), ...(madeAt ? { madeAt } : {}) };
}
