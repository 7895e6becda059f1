import { chooseVersion, type Edited, isSame } from './edit-order.ts';
import type { Journal } from './journal.ts';

/** What a merge would do with one kind of thing; each list holds identities (ids, days, weeks). */
export interface Comparison {
  /** Only the incoming journal has it. */
  added: string[];
  /** Both have it and the incoming edit is later: it replaces ours. */
  changed: string[];
  /** Both have it and ours is later: ours stays. */
  kept: string[];
  same: string[];
  /** Of `changed`: those that the incoming journal removes. */
  removed: string[];
}

/** What a merge would do, to be shown before it is done. */
export interface JournalComparison {
  drills: Comparison;
  days: Comparison;
  weeks: Comparison;
  /** Scraps of the notes wall, by id. */
  notes: Comparison;
  milestones: Comparison;
  /** Sums over all five. */
  addedCount: number;
  changedCount: number;
  keptCount: number;
  sameCount: number;
  majorGoal: 'added' | 'changed' | 'kept' | 'same';
}

/**
 * Tells what merging a journal into ours would do.
 * @param ours the journal we have.
 * @param incoming the one that would be merged.
 * @returns so many new, changed, kept and the same, and which.
 */
export function compareJournals(ours: Journal, incoming: Journal): JournalComparison {
  const drills = compare(ours.drills, incoming.drills, (record) => record.id);
  const days = compare(ours.days, incoming.days, (entry) => entry.date);
  const weeks = compare(ours.weeks, incoming.weeks, (page) => page.week);
  const notes = compare(ours.notes ?? [], incoming.notes ?? [], (note) => note.id);
  const milestones = compare(ours.milestones ?? [], incoming.milestones ?? [], (one) => one.id);
  const sum = (of: (comparison: Comparison) => string[]): number =>
    [drills, days, weeks, notes, milestones].reduce((count, one) => count + of(one).length, 0);
  return {
    drills,
    days,
    weeks,
    notes,
    milestones,
    addedCount: sum((one) => one.added),
    changedCount: sum((one) => one.changed),
    keptCount: sum((one) => one.kept),
    sameCount: sum((one) => one.same),
    majorGoal: incoming.majorGoal === undefined ? 'same' : verdict(ours.majorGoal, incoming.majorGoal),
  };
}

function compare<T extends Edited>(
  ours: readonly T[],
  incoming: readonly T[],
  identityOf: (thing: T) => string,
): Comparison {
  const known = new Map(standing(ours, identityOf));
  const comparison: Comparison = { added: [], changed: [], kept: [], same: [], removed: [] };
  for (const [identity, theirs] of standing(incoming, identityOf)) {
    const mine = known.get(identity);
    const outcome = verdict(mine, theirs);
    comparison[outcome].push(identity);
    if (outcome === 'changed' && theirs.removed && !mine?.removed) comparison.removed.push(identity);
  }
  return comparison;
}

function standing<T extends Edited>(things: readonly T[], identityOf: (thing: T) => string): Map<string, T> {
  const byIdentity = new Map<string, T>();
  for (const thing of things) {
    const before = byIdentity.get(identityOf(thing));
    byIdentity.set(identityOf(thing), before === undefined ? thing : chooseVersion(before, thing));
  }
  return byIdentity;
}

function verdict<T extends Edited>(mine: T | undefined, theirs: T): 'added' | 'changed' | 'kept' | 'same' {
  if (mine === undefined) return 'added';
  if (isSame(mine, theirs)) return 'same';
  return chooseVersion(mine, theirs) === theirs ? 'changed' : 'kept';
}
