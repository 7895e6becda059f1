import type { Program } from '../program/program.ts';
import type { DrillRecord } from './drill-record.ts';

/**
 * Whether a drill was of a program.
 * @param record a drill record
 * @param program matched by `id` where program and record both have one, else by title
 * @returns true if it was
 */
export function isOfProgram(
  record: Pick<DrillRecord, 'program' | 'programId'>,
  program: Pick<Program, 'id' | 'title'>,
): boolean {
  if (program.id !== undefined && record.programId !== undefined) return program.id === record.programId;
  return program.title === record.program;
}
