import { compareInstants, type NoteScrap } from '@larkhold/engine';

/**
 * The scraps that a wall shows.
 * @param notes those of the journal
 * @param programId of the one program whose scraps are wanted; absent for all
 * @returns the newest first; none that was taken down
 */
export function notesShown(notes: readonly NoteScrap[], programId?: string): NoteScrap[] {
  return notes
    .filter((note) => !note.removed && (programId === undefined || note.programId === programId))
    .sort((a, b) => compareInstants(b.madeAt, a.madeAt));
}
