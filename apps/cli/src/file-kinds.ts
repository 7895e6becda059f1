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

/** A file that holds a journal. */
export type JournalFile = Extract<OpenedFile, { kind: 'journal' | 'backup' | 'hand-over' }>;

/** A file of ours, or all that is wrong with it. */
export type ReadFile = { ok: true; file: OpenedFile } | { ok: false; kind: OpenedFile['kind']; faults: FileFault[] };

const readers = {
  ...{ program: parseProgram, season: parseSeason, journal: parseJournal, backup: parseBackup },
  'hand-over': parseHandOver,
};

/**
 * Reads a file of any kind that we write.
 * @param text its text
 * @returns what it is, or all that is wrong with it. A file that names no kind is read as a program, the one that people write by hand
 */
export function readAnyFile(text: string): ReadFile {
  const named = namedFormat(text);
  const kind = isKind(named) ? named : 'program';
  const { ok, ...read } = readers[kind](text);
  if (!('problems' in read)) return { ok: true, file: { kind, ...read } as OpenedFile };
  return { ok: false, kind, faults: read.problems.map((one) => ({ ...one, message: problemWords(one) })) };
}

/**
 * Faults as lines that editors and terminals can follow.
 * @param path as it was given
 * @param faults what is wrong
 * @returns one line each: `path:line:column: message`
 */
export function faultLines(path: string, faults: readonly FileFault[]): string[] {
  return faults.map(({ line, column, message }) =>
    [path, line, column].filter(Boolean).join(':').concat(': ', message),
  );
}

/** @returns the kind as messages tell it apart; undefined counts as a program */
export function kindName(kind: OpenedFile['kind'] = 'program'): Exclude<OpenedFile['kind'], 'hand-over'> | 'other' {
  return kind === 'hand-over' ? 'other' : kind;
}

/** @returns the journal of a file, without what marks the file or is this device's own: the kit */
export function journalOf(file: JournalFile): Journal {
  if (file.kind === 'journal') return file.journal;
  if (file.kind === 'backup') {
    const { format: _format, version: _version, madeAt: _madeAt, kit: _kit, ...journal } = file.backup;
    return journal;
  }
  const { majorGoal, weeks, days, drills, milestones } = file.handOver;
  return { majorGoal, weeks, days, drills, milestones };
}

function isKind(name: string | undefined): name is OpenedFile['kind'] {
  return name !== undefined && Object.hasOwn(readers, name);
}
