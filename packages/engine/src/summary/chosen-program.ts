import type { Past } from '../archer/past.ts';
import type { DrillRecord } from '../journal/drill-record.ts';
import { compareInstants } from '../journal/edit-order.ts';
import { lastDrill } from '../journal/last-drill.ts';
import type { Program } from '../program/program.ts';
import { idOf } from '../program/program-id.ts';

/**
 * The program that the line shows: the one the archer took, else the one drilled last, else the first.
 * @param programs of the rack, in its order
 * @param takenId what the kit keeps; nothing while none was taken
 * @param drills of the journal, in any order
 * @param past what the drills before these fold into, where they are not given
 * @returns the program; undefined only for an empty rack
 */
export function chosenProgram(
  programs: readonly Program[],
  takenId: string | undefined,
  drills: readonly DrillRecord[],
  past?: Past,
): Program | undefined {
  const taken = takenId === undefined ? undefined : programs.find(({ id }) => id === takenId);
  if (taken) return taken;
  const lastId = lastDrilledId(drills, past?.lastDrill);
  return programs.find((program) => idOf(program) === lastId) ?? programs[0];
}

function lastDrilledId(drills: readonly DrillRecord[], before: Past['lastDrill']): string | undefined {
  const last = lastDrill(drills);
  if (before && compareInstants(before.startedAt, last?.startedAt) >= 0) return before.programId;
  return last && (last.programId ?? last.program);
}
