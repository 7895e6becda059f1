import { compareInstants } from '../journal/edit-order.ts';
import type { NoteScrap } from '../journal/journal.ts';

/**
 * The scraps that a wall shows.
 * @param notes those of the journal
 * @param pin the one program or ISO week whose scraps are wanted; neither for all
 * @returns the newest first; none that was removed
 */
export function notesShown(
  notes: readonly NoteScrap[],
  { programId, week }: { programId?: string; week?: string } = {},
): NoteScrap[] {
  return notes
    .filter(({ removed }) => !removed)
    .filter((note) => programId === undefined || note.programId === programId)
    .filter((note) => week === undefined || note.week === week)
    .sort((a, b) => compareInstants(b.madeAt, a.madeAt));
}
