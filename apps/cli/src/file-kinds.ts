import {
  type Complaint,
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
import { problemWords } from '@larkhold/words';

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

type Complained = { ok: false; problems: readonly (Complaint & Omit<FileFault, 'message'>)[] };

function outcome<Read extends { ok: true } | Complained>(
  kind: OpenedFile['kind'],
  read: Read,
  opened: (read: Extract<Read, { ok: true }>) => OpenedFile,
): ReadFile {
  if (isGood(read)) return { ok: true, file: opened(read) };
  return {
    ok: false,
    kind,
    faults: (read as Complained).problems.map((one) => ({ ...one, message: problemWords(one) })),
  };
}

function isGood<Read extends { ok: boolean }>(read: Read): read is Extract<Read, { ok: true }> {
  return read.ok;
}

const readers: { [Kind in OpenedFile['kind']]: (text: string) => ReadFile } = {
  program: (text) => outcome('program', parseProgram(text), ({ program }) => ({ kind: 'program', program })),
  season: (text) => outcome('season', parseSeason(text), ({ season }) => ({ kind: 'season', season })),
  journal: (text) => outcome('journal', parseJournal(text), ({ journal }) => ({ kind: 'journal', journal })),
  backup: (text) => outcome('backup', parseBackup(text), ({ backup }) => ({ kind: 'backup', backup })),
  'hand-over': (text) => outcome('hand-over', parseHandOver(text), ({ handOver }) => ({ kind: 'hand-over', handOver })),
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

/** @returns the kind as messages tell it apart; undefined counts as a program */
export function kindName(kind: OpenedFile['kind'] = 'program'): Exclude<OpenedFile['kind'], 'hand-over'> | 'other' {
  return kind === 'hand-over' ? 'other' : kind;
}

function isKind(name: string | undefined): name is OpenedFile['kind'] {
  return name !== undefined && Object.hasOwn(readers, name);
}
