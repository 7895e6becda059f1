import {
  chosenProgram,
  idOf,
  type Journal,
  type Prescription,
  type Program,
  prescribe,
  rackPrograms,
  readablePrograms,
  seasonEffects,
  type TodaysProgram,
  todaysProgram,
} from '@larkhold/engine';
import { archerOf, type Backup } from '@larkhold/store';
import { programInWords, say, type Units } from '@larkhold/words';
import type { OpenedFile } from './file-kinds.ts';
import { openFile } from './open-file.ts';
import { CommandEnd, exitCodes, type Surroundings } from './surroundings.ts';

/** Which drill is asked for. */
export interface DrillWish {
  /** A program's id or title; without it, the one on the archer's line. */
  program?: string;
  /** Whole minutes that there are. */
  minutes?: number;
  /** ISO 8601 day; without it, today. */
  day?: string;
}

/** A file that a day's drill can come from. */
export type DrillFile = Extract<OpenedFile, { kind: 'backup' | 'program' }>;

/** A day's drill. */
export interface TodaysDrill {
  prescription: Prescription;
  units: Units;
}

/**
 * The drill of a day, from a backup (what was done, diary, archer, programs) or from a program alone.
 * @param path a backup or a program file, `-` for standard input
 * @param wish day (today where left out), program, minutes
 * @param around the surroundings
 * @returns the prescription
 * @throws CommandEnd where there is no such file or program, or a wish is out of range
 */
export async function todaysDrill(path: string, wish: DrillWish, around: Surroundings): Promise<TodaysDrill> {
  const file = await openFile(path, ['backup', 'program'], around);
  const { day: today = around.today(), minutes } = wish;
  try {
    if (file.kind === 'program') {
      const program = programOf(file, wish.program);
      return { prescription: prescribe({ program, today, minutes, records: [] }), units: 'metric' };
    }
    const { kit } = file.backup;
    const { records, days, archer } = knownOf(file.backup);
    const { program: due, season } = seasonOf(file.backup, today);
    const program = wish.program === undefined ? programInWords(due) : programOf(file, wish.program);
    const effects = seasonEffects(season, program, today, wish.program === undefined ? kit.programDay : today);
    const prescription = prescribe({ program, today, minutes, records, days, archer, ...effects });
    return { prescription, units: kit.units };
  } catch (cause) {
    if (cause instanceof RangeError) throw new CommandEnd(exitCodes.usage, cause.message);
    throw cause;
  }
}

/** What is due on a day, by the season of a backup or the sensible one. */
function seasonOf({ kit, ...journal }: Backup, today: string): TodaysProgram {
  const { competitionDay, usualMinutes, daysPerWeek: usualDays } = kit.plan ?? {};
  return todaysProgram({
    ...{ journal, programs: rackOf(journal), today, archer: archerOf(kit), competitionDay, usualMinutes, usualDays },
    ...{ takenId: kit.programId, takenDay: kit.programDay },
  });
}

const rackOf = (journal: Pick<Journal, 'opened'>): Program[] => rackPrograms(readablePrograms(journal));

/** What a backup tells of an archer. @param backup any. @returns the part of a prescription's input that it decides */
export function knownOf({ drills: records, days, kit }: Backup) {
  return { records, days, archer: archerOf(kit), competitionDay: kit.plan?.competitionDay };
}

/**
 * The program of a program file, or one of a backup or built in.
 * @param file where opened programs are
 * @param wanted an id or a title; undefined for the file's own, or the one on the archer's line
 * @returns the program
 * @throws CommandEnd where there is none
 */
export function programOf(file: DrillFile, wanted: string | undefined): Program {
  const programs = file.kind === 'program' ? [file.program] : rackOf(file.backup);
  const found =
    wanted !== undefined
      ? programs.find((program) => [idOf(program), program.title, programInWords(program).title].includes(wanted))
      : file.kind === 'program'
        ? file.program
        : chosenProgram(programs, file.backup.kit.programId, file.backup.drills);
  if (found) return programInWords(found);
  const titles = programs.map((program) => `  ${programInWords(program).title}`);
  throw new CommandEnd(exitCodes.wrong, [say('prompt.noProgram', { name: wanted ?? '' }), ...titles].join('\n'));
}
