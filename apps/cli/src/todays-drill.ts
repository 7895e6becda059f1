import {
  builtInPrograms,
  chosenProgram,
  idOf,
  type Prescription,
  type Program,
  prescribe,
  readablePrograms,
} from '@larkhold/engine';
import { archerOf, type Backup } from '@larkhold/store';
import type { OpenedFile } from './file-kinds.ts';
import { CommandEnd, exitCodes } from './surroundings.ts';

/** Which drill is asked for. */
export interface DrillWish {
  /** A program's id or title; without it, the one on the archer's line. */
  program?: string;
  /** Whole minutes that there are. */
  minutes?: number;
  /** ISO 8601 day. */
  day: string;
}

/** A day's drill and where it came from. */
export interface TodaysDrill {
  program: Program;
  prescription: Prescription;
}

/**
 * The drill of a day, from a backup (what was done, diary, archer, programs) or from a program alone.
 * @param file a backup or a program
 * @param wish day, program, minutes
 * @returns program and prescription
 * @throws CommandEnd where there is no such program, or a wish is out of range
 */
export function todaysDrill(file: Extract<OpenedFile, { kind: 'backup' | 'program' }>, wish: DrillWish): TodaysDrill {
  const { day: today, minutes } = wish;
  const program = file.kind === 'program' ? file.program : programOf(file.backup, wish.program);
  const known = file.kind === 'program' ? { records: [] } : knownOf(file.backup);
  try {
    return { program, prescription: prescribe({ program, today, minutes, ...known }) };
  } catch (cause) {
    if (cause instanceof RangeError) throw new CommandEnd(exitCodes.usage, cause.message);
    throw cause;
  }
}

/** What a backup tells of an archer. @param backup any. @returns the part of a prescription's input that it decides */
export function knownOf({ drills: records, days, kit }: Backup) {
  return { records, days, archer: archerOf(kit), competitionDay: kit.plan?.competitionDay };
}

/**
 * A program of a backup, or a built-in one.
 * @param backup where opened programs are
 * @param wanted an id or a title; undefined for the one on the archer's line
 * @returns the program
 * @throws CommandEnd where there is none
 */
export function programOf({ kit, ...journal }: Backup, wanted: string | undefined): Program {
  const opened = readablePrograms(journal);
  const openedIds = new Set(opened.map(idOf));
  const programs = [...builtInPrograms.filter((program) => !openedIds.has(idOf(program))), ...opened];
  const found =
    wanted === undefined
      ? chosenProgram(programs, kit.programId, journal.drills)
      : programs.find((program) => idOf(program) === wanted || program.title === wanted);
  if (found) return found;
  const titles = programs.map(({ title }) => `  ${title}`).join('\n');
  throw new CommandEnd(
    exitCodes.wrong,
    `There is no program '${wanted}'. The backup and the built-in ones have:\n${titles}`,
  );
}
