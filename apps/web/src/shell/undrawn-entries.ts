import type { Journal, Program } from '@larkhold/engine';
import { findOddEntries, type OddEntry, oddEntry } from './odd-entries.ts';

/** The entries that no page can draw, found when a drawing fails. */
export interface UndrawnEntries {
  /** As they are shown in place of themselves. */
  readonly entries: readonly OddEntry[];
  /** Whether this very entry is one. One that is changed is tried again. */
  has(row: object): boolean;
  /** Forgets one that the archer has removed. */
  forget(row: object): void;
  /** The journal without them. */
  without(journal: Journal): Journal;
  /** Looks for them in all that is drawn, once for a journal. @returns whether any was found */
  find(drawn: { journal: Journal; programs: readonly Program[] }, today: string): boolean;
}

/**
 * Keeps what cannot be drawn.
 * @returns nothing found yet
 */
export function createUndrawnEntries(): UndrawnEntries {
  const undrawn = new Map<object, OddEntry>();
  let sifted: Journal | undefined;
  return {
    get entries() {
      return [...undrawn.values()];
    },
    has: (row) => undrawn.has(row),
    forget: (row) => void undrawn.delete(row),
    without(journal) {
      if (undrawn.size === 0) return journal;
      const kept = <T extends object>(rows: readonly T[]): T[] => rows.filter((row) => !undrawn.has(row));
      const { drills, days, weeks, notes, milestones } = journal;
      return {
        ...{ ...journal, drills: kept(drills), days: kept(days), weeks: kept(weeks) },
        ...(notes ? { notes: kept(notes) } : {}),
        ...(milestones ? { milestones: kept(milestones) } : {}),
      };
    },
    find(drawn, today) {
      if (sifted === drawn.journal) return false;
      sifted = drawn.journal;
      const found = findOddEntries({ ...drawn, today });
      for (const { table, row, message } of found) undrawn.set(row, oddEntry(table, row, message));
      return found.length > 0;
    },
  };
}
