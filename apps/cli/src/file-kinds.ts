import {
  type HandOver,
  type Journal,
  namedFormat,
  type Program,
  parseHandOver,
  parseJournal,
  parseProgram,
  parseSeason,
  type Season,
} from '@larkhold/engine';
import { type Backup, parseBackup } from '@larkhold/store';

/** What is wrong at one place of a file. */
export interface FileFault {
  /** From 1; absent where the fault has no place. */
  line?: number | undefined;
  column?: number | undefined;
  message: string;
}

/** A file of ours, read. */
export type OpenedFile =
  | { kind: 'program'; program: Program }
  | { kind: 'season'; season: Season }
  | { kind: 'journal'; journal: Journal }
  | { kind: 'backup'; backup: Backup }
  | { kind: 'hand-over'; handOver: HandOver };

/** A file of ours, or all that is wrong with it. */
export type ReadFile = { ok: true; file: OpenedFile } | { ok: false; kind: OpenedFile['kind']; faults: FileFault[] };

const readers: { [Kind in OpenedFile['kind']]: (text: string) => ReadFile } = {
  program(text) {
    const read = parseProgram(text);
    if (!read.ok) return { ok: false, kind: 'program', faults: read.problems };
    return { ok: true, file: { kind: 'program', program: read.program } };
  },
  season(text) {
    const read = parseSeason(text);
    if (!read.ok) return { ok: false, kind: 'season', faults: read.problems };
    return { ok: true, file: { kind: 'season', season: read.season } };
  },
  journal(text) {
    const read = parseJournal(text);
    if (!read.ok) return { ok: false, kind: 'journal', faults: read.problems };
    return { ok: true, file: { kind: 'journal', journal: read.journal } };
  },
  backup(text) {
    const read = parseBackup(text);
    if (!read.ok) return { ok: false, kind: 'backup', faults: read.problems };
    return { ok: true, file: { kind: 'backup', backup: read.backup } };
  },
  'hand-over'(text) {
    const read = parseHandOver(text);
    if (!read.ok) return { ok: false, kind: 'hand-over', faults: read.problems };
    return { ok: true, file: { kind: 'hand-over', handOver: read.handOver } };
  },
};

/**
 * Reads a file of any kind that we write.
 * @param text its text
 * @returns what it is, or all that is wrong with it. A file that names no kind is read as a program, the one that people write by hand
 */
export function readAnyFile(text: string): ReadFile {
  const named = namedFormat(text);
  return (isKind(named) ? readers[named] : readers.program)(text);
}

function isKind(name: string | undefined): name is OpenedFile['kind'] {
  return name !== undefined && Object.hasOwn(readers, name);
}
