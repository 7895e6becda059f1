import type { Milestone } from '../journal/journal.ts';

/** What is on the wall. */
export interface MilestonesShown {
  /** Still open, the one written down first on top. */
  open: readonly Milestone[];
  /** Reached, the latest on top. */
  reached: readonly Milestone[];
}

/**
 * Sorts milestones into what is open and what was reached.
 * @param milestones visible ones, in any order
 * @returns both lists
 */
export function milestonesShown(milestones: readonly Milestone[]): MilestonesShown {
  const reachedOn = ({ reachedDay = '' }: Milestone): string => reachedDay;
  return {
    open: milestones
      .filter(({ reachedDay }) => reachedDay === undefined)
      .sort((a, b) => compare(a.setDay, b.setDay) || compare(a.id, b.id)),
    reached: milestones
      .filter(({ reachedDay }) => reachedDay !== undefined)
      .sort((a, b) => compare(reachedOn(b), reachedOn(a)) || compare(a.id, b.id)),
  };
}

function compare(a: string, b: string): number {
  return a === b ? 0 : a < b ? -1 : 1;
}
